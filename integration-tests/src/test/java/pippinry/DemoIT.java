package pippinry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main job on the demo program, as the README's first command does it. */
class DemoIT {

    private static final Path SCRIPT = RunningProgram.IMAGE.resolve("bin/pippinry");

    @TempDir
    private static Path folder;

    private static Path program;

    @BeforeAll
    static void runTheDemo() throws Exception {
        CalledProgram.Answer answer = CalledProgram.of(
                        SCRIPT,
                        "demo",
                        "--headless",
                        "--out",
                        folder.resolve("out").toString())
                .with("XDG_DATA_HOME", folder.resolve("data").toString())
                .with("HOME", folder.toString())
                .answer();
        assertEquals(0, answer.exit(), answer.err());
        program = folder.resolve("data/pippinry/demo");
    }

    @Test
    void itLeavesTheSeasonBookAndTheTags() {
        for (String file : new String[] {"season-book.html", "season-book.pdf", "tags-pollinations.pdf"}) {
            assertTrue(Files.isRegularFile(folder.resolve("out").resolve(file)), file);
        }
    }

    @Test
    void theBookTellsWhichCrossesAndWhatIsDue() throws Exception {
        String book = Files.readString(folder.resolve("out/season-book.html"));
        assertTrue(book.contains("What is due") && book.contains("Crosses for this spring"));
    }

    @Test
    void theDemoProgramHoldsTogether() throws Exception {
        CalledProgram.Answer answer = CalledProgram.of(SCRIPT, "verify", "--program", program.toString())
                .answer();
        assertEquals(0, answer.exit(), answer.out() + answer.err());
    }

    @Test
    void asofShowsWhatWasNotYetKnown() throws Exception {
        String[] who = {"who", "15-007-052"};
        CalledProgram.Answer then = CalledProgram.of(
                        SCRIPT, "asof", "--program", program.toString(), "2020-06-01", who[0], who[1])
                .answer();
        CalledProgram.Answer now = CalledProgram.of(SCRIPT, who[0], "--program", program.toString(), who[1])
                .answer();
        assertTrue(now.out().contains("2024-12-07") && !then.out().contains("2024-12-07"), then.out());
    }
}
