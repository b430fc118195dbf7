package pippinry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables, archive and questions about numbers, called as a person calls them, on a program on disk. */
class ExchangeIT {

    private static final Path SCRIPT = RunningProgram.IMAGE.resolve("bin/pippinry");

    @TempDir
    private Path folder;

    @Test
    void aProgramMovesHouseByTablesAndByArchive() throws Exception {
        Path one = folder.resolve("one");
        Path genotypes = Files.writeString(
                folder.resolve("genotypes.csv"),
                "\ufeffcode,name,seed_parent\r\n26-014-073,,FIE\r\nFIE,\"Fiesta, red\",\r\n");
        Path scores = Files.writeString(
                folder.resolve("scores.csv"), "subject,trait,value,date\n26-014-073=Y,bbch,65,2026-05-14\n");
        assertEquals(
                0, call("new", one, "--crop", "apple", "--name", "Larkmoor").exit());
        assertEquals(0, call("import", one, genotypes, scores).exit());
        assertEquals(0, call("export", one, folder.resolve("tables")).exit());
        assertEquals(
                0, call("export", one, folder.resolve("one.jsonl"), "--archive").exit());

        Path again = folder.resolve("again");
        assertEquals(0, call("import", again, folder.resolve("one.jsonl")).exit());
        assertEquals(
                0,
                call("export", again, folder.resolve("again.jsonl"), "--archive")
                        .exit());
        assertSame(folder.resolve("one.jsonl"), folder.resolve("again.jsonl"));

        Path other = folder.resolve("other");
        assertEquals(0, call("new", other, "--crop", "pear").exit());
        assertEquals(
                0,
                call("import", other, folder.resolve("tables/genotypes.csv"), folder.resolve("tables/scores.csv"))
                        .exit());
        assertEquals(0, call("export", other, folder.resolve("tables2")).exit());
        assertSame(folder.resolve("tables/genotypes.csv"), folder.resolve("tables2/genotypes.csv"));
        assertSame(folder.resolve("tables/scores.csv"), folder.resolve("tables2/scores.csv"));

        assertEquals(0, call("verify", "--program", other).exit());
        CalledProgram.Answer wrong = call("who", "--program", other, "26-014-073=X", "--json");
        assertEquals(1, wrong.exit());
        assertTrue(wrong.out().contains("\"nearest\" : [ \"26-014-073\""), wrong.out());
    }

    @Test
    void whatIsWrongHasItsExitCodeAndItsPlace() throws Exception {
        Path bad = Files.writeString(folder.resolve("genotypes.csv"), "code,year\nFIE,2015-02-30\n");
        Path program = folder.resolve("program");
        assertEquals(3, call("import", program, bad).exit(), "there is no such program");
        assertEquals(0, call("new", program, "--crop", "apple").exit());
        assertEquals(3, call("new", program, "--crop", "apple").exit(), "there is one already");
        CalledProgram.Answer refused = call("import", program, bad);
        assertEquals(2, refused.exit());
        assertTrue(refused.err().contains(bad + " line 2, column year: '2015-02-30'; expected a date that exists"));
        assertEquals("", refused.out());
    }

    @Test
    void aListOfOnesOwnIsBroughtIn() throws Exception {
        Path list = Files.writeString(folder.resolve("mine.csv"), "Number;Planted;Vigour\n26-14-1;14.5.2027;strong\n");
        Path program = folder.resolve("program");
        call("new", program, "--crop", "apple");
        assertEquals(0, call("bring", list, "--program", program).exit());
        CalledProgram.Answer who = call("who", "--program", program, "26-014-001A");
        assertTrue(who.out().contains("made on 2027-05-14") && who.out().contains("Vigour: strong"), who.out());
    }

    private static CalledProgram.Answer call(Object... words) throws Exception {
        return CalledProgram.of(
                        SCRIPT, Arrays.stream(words).map(String::valueOf).toArray(String[]::new))
                .answer();
    }

    private static void assertSame(Path one, Path other) throws Exception {
        assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(other), other.toString());
    }
}
