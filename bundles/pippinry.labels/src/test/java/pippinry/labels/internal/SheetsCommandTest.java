package pippinry.labels.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import pippinry.commandline.Answer;
import pippinry.commandline.CallRefused;
import pippinry.labels.internal.wanted.SmallProgram;
import pippinry.model.record.Kinds;
import pippinry.model.record.Sheet;

class SheetsCommandTest {
    @TempDir
    Path folder;

    private FakeCall call;
    private Path out;

    @BeforeEach
    void open() throws Exception {
        call = new FakeCall(SmallProgram.larkmoor()
                .row(Kinds.TRAITS, "code=blush", "name=Pink blush", "low=0", "high=5", "states=0 none|5 all round")
                .row(Kinds.TRAITS, "code=girth", "unit=mm")
                .program());
        out = folder.resolve("sheet.pdf");
    }

    private Answer run(Object... arguments) throws Exception {
        return call.run(new SheetsCommand(List.of()), arguments);
    }

    private String text() throws Exception {
        try (PDDocument document = Loader.loadPDF(out.toFile())) {
            return new PDFTextStripper().getText(document).replace('\u00a0', ' ');
        }
    }

    @Test
    void aScoreSheetGoesOnFileWithItsRowsInWalkingOrder() throws Exception {
        Answer answer = run("--trait", "blush,girth", "--block", "A", "--out", out);
        Sheet sheet = call.program().table(Kinds.SHEETS).stream().findFirst().orElseThrow();
        assertEquals(List.of("24-003-002B", "COX-A"), sheet.subjectList());
        assertEquals(List.of("blush", "girth"), sheet.traitList());
        assertEquals(List.of("24-003-002B", "COX-A"), answer.json().get("subjects"));
        assertTrue(text().contains("block A · row 2 · counted from the gate · guards not counted"), text());
        assertTrue(text().contains("Pink blush") && text().contains("0 – 5"), text());
        assertTrue(text().contains("5 all round"), text());
        assertTrue(text().contains("S-0001="), text());
    }

    @Test
    void aCountSheetGoesTreeByTree() throws Exception {
        Answer answer = run("--for", "pollinations", "--out", out);
        assertEquals(List.of("26-015/2", "26-015/10"), answer.json().get("subjects"));
        assertEquals(List.of("set", "june", "harvest"), answer.json().get("columns"));
        assertTrue(text().contains("on COX-A · A · row 2, place 10"), text());
    }

    @Test
    void aSheetPrintedAgainIsTheSamePaper() throws Exception {
        run("--trait", "blush", "--out", out);
        byte[] first = Files.readAllBytes(out);
        run("--again", "S-0001", "--out", out);
        assertArrayEquals(first, Files.readAllBytes(out));
        assertEquals(1, call.program().table(Kinds.SHEETS).size());
    }

    @Test
    void numbersGoOn() throws Exception {
        run("--trait", "blush", "--out", out);
        run("--trait", "girth", "--out", out);
        assertTrue(call.program().table(Kinds.SHEETS).find("S-0002").isPresent());
    }

    @Test
    void aBlockWithoutTreesIsAnAnswerOfNo() throws Exception {
        assertFalse(run("--trait", "blush", "--block", "Z", "--out", out).yes());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "--trait blush; Where to?",
                "--out OUT; Which traits?",
                "--trait scab --out OUT; There is no trait 'scab'. No crop pack is here for this program's crop. Traits are blush, girth",
                "--for pollinations --trait weight --out OUT; 'weight' is not counted; counted are bag_off",
                "--for moths --out OUT; expected one of trees, pots, pollinations, seedlots",
                "--again S-0099 --out OUT; No sheet S-0099 is on file"
            })
    void aWrongCallIsRefusedWithAReason(String arguments, String reason) {
        Object[] words = Arrays.stream(arguments.split(" "))
                .map(word -> word.equals("OUT") ? out : word)
                .toArray();
        var refused = assertThrows(CallRefused.class, () -> run(words));
        assertTrue(refused.getMessage().contains(reason), refused.getMessage());
        assertEquals(0, call.program().table(Kinds.SHEETS).size(), "nothing is put on file");
    }

    @Test
    void helpHasAnExample() {
        String help = new CommandLine(new SheetsCommand(List.of())).getUsageMessage();
        assertTrue(help.contains("pippinry sheets --program larkmoor --trait scab_leaf"), help);
    }
}
