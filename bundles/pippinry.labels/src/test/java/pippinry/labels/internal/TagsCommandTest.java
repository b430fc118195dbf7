package pippinry.labels.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

class TagsCommandTest {
    @TempDir
    Path folder;

    private FakeCall call;
    private Path out;

    @BeforeEach
    void open() throws Exception {
        call = new FakeCall(SmallProgram.larkmoor().program());
        out = folder.resolve("new folder/tags.pdf");
    }

    private Answer run(Object... arguments) throws Exception {
        return call.run(new TagsCommand(null), arguments);
    }

    private String text() throws IOException {
        try (PDDocument document = Loader.loadPDF(out.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void tagsForTreesAreWrittenAndTold() throws Exception {
        Answer answer = run("--for", "trees", "--sheet", "A4-24", "--out", out);
        assertTrue(answer.yes());
        assertEquals(2, answer.json().get("tags"));
        assertEquals(1, answer.json().get("pages"));
        assertEquals(3, answer.json().get("next_free"));
        assertEquals(false, answer.json().get("recorded"));
        assertTrue(text().contains("COX-A"), text());
        assertTrue(answer.words().contains("2 tags for trees on 1 page of A4-24 (63.5 x 33.9 mm)"), answer.words());
        assertEquals(0, call.program().table(Kinds.TASKS).size(), "nothing is noted unless it is wanted");
    }

    @Test
    void neutralNumbersAreGivenOutOnce() throws Exception {
        Answer first = run("--for", "neutral", "--count", 3, "--sheet", "A4-65", "--out", out);
        Answer second = run("--for", "neutral", "--count", 3, "--sheet", "A4-65", "--out", out);
        List<?> numbers = (List<?>) first.json().get("numbers");
        assertEquals(3, numbers.size());
        assertTrue(numbers.stream().noneMatch(((List<?>) second.json().get("numbers"))::contains));
        assertEquals(9, call.program().table(Kinds.POLLINATIONS).size(), "three were there");
    }

    @Test
    void recordedTagsNoLongerWait() throws Exception {
        run("--for", "plants", "--record", "--out", out);
        Answer answer = run("--for", "plants", "--waiting", "--out", out);
        assertFalse(answer.yes());
        assertEquals(0, answer.json().get("tags"));
        assertEquals(4, call.program().table(Kinds.TASKS).size());
        run("--for", "plants", "--number", "COX-A", "--record", "--out", out);
        assertEquals(
                "Tag printed again for plants",
                call.program().table(Kinds.TASKS).get(4).orElseThrow().text());
    }

    @Test
    void plannedBranchesComeOnFileWhenRecorded() throws Exception {
        run("--for", "pollinations", "--cross", "26-014", "--record", "--out", out);
        assertTrue(call.program().table(Kinds.POLLINATIONS).find("26-014/1").isPresent());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "--for trees; Where to?",
                "--out OUT; What are the tags for?",
                "--for flowers --out OUT; --for flowers: expected one of pollinations, neutral",
                "--for neutral --out OUT; --count N",
                "--for trees --sheet A4-99 --out OUT; There is no sheet named 'A4-99'. The sheets are A4-4",
                "--for trees --code aztek --out OUT; expected one of qr, datamatrix, code128, none",
                "--for trees --start 22 --out OUT; labels 1 to 21",
                "--for trees --marks thick --out OUT; expected none, corners or outlines",
                "--for trees --dpi 5 --out OUT; 100 to 2400 dots",
                "--for trees --read-from 50 --out OUT; 0.2 to 10 m",
                "--for trees --number COX-A=Z --out OUT; the check is wrong",
                "--for trees --number 77-001-001A --out OUT; no such number is on file among the trees",
                "--for trees --sheet roll-9x9 --out OUT; does not fit on a label of roll-9x9",
                "--for trees --own-sheets nowhere.csv --out OUT; nowhere.csv: there is no such file"
            })
    void aWrongCallIsRefusedWithAReason(String arguments, String reason) {
        Object[] words = Arrays.stream(arguments.split(" "))
                .map(word -> word.equals("OUT") ? out : word)
                .toArray();
        var refused = assertThrows(CallRefused.class, () -> run(words));
        assertTrue(refused.getMessage().contains(reason), refused.getMessage());
        assertFalse(Files.exists(out));
    }

    @Test
    void aRefusedPrintLeavesTheOldFileAndNothingBesideIt() throws Exception {
        run("--for", "trees", "--out", out);
        byte[] before = Files.readAllBytes(out);
        assertThrows(CallRefused.class, () -> run("--for", "trees", "--sheet", "roll-9x9", "--out", out));
        assertEquals(-1, Arrays.mismatch(before, Files.readAllBytes(out)));
        try (var files = Files.list(out.getParent())) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void withoutAKindItTellsWhatThereIs() throws Exception {
        run("--for", "trees", "--record", "--out", out);
        Answer answer = run();
        assertTrue(answer.words().contains("trees               2        0"), answer.words());
        assertTrue(answer.words().contains("plants              4        2"), answer.words());
        assertEquals(9, ((List<?>) FakeCall.of(answer, "kinds").orElseThrow()).size());
    }

    @Test
    void aListToEmbossHasOneTagALine() throws Exception {
        Path text = folder.resolve("emboss.txt");
        run("--for", "trees", "--text", text, "--out", out);
        List<String> lines = Files.readAllLines(text);
        assertEquals(2, lines.size());
        assertTrue(lines.get(1).matches("COX-A=.\tCox’s Orange Pippin; on M.9 · A · row 2, place 10"), lines.get(1));
    }

    @Test
    void aPersonsOwnSheetIsTaken() throws Exception {
        Path own = folder.resolve("own.csv");
        Files.writeString(
                own,
                "\ufeffsheet_id,page_w_mm,page_h_mm,cols,rows,label_w_mm,label_h_mm,left_margin_mm,top_margin_mm,pitch_x_mm,"
                        + "pitch_y_mm,basis\nstakes,210,297,1,10,180,25,15,20,180,25,measured\n");
        Answer answer = run("--for", "trees", "--own-sheets", own, "--sheet", "stakes", "--out", out);
        assertEquals("stakes", answer.json().get("sheet"));
    }

    @Test
    void aTableInAnotherEncodingIsRefused() throws Exception {
        Path own = folder.resolve("own.csv");
        Files.write(own, "sheet_id,label_w_mm,label_h_mm\nÄpfel,1,1\n".getBytes(StandardCharsets.ISO_8859_1));
        var refused = assertThrows(CallRefused.class, () -> run("--for", "trees", "--own-sheets", own, "--out", out));
        assertTrue(refused.getMessage().contains("own.csv line 2"), refused.getMessage());
        assertTrue(refused.getMessage().contains("not UTF-8"), refused.getMessage());
    }

    @Test
    void theTestPageNeedsNoProgram() throws Exception {
        Answer answer = call.run(new TagsCommand(null), "--test", "--sheet", "A4-65", "--out", out);
        assertEquals(1, answer.json().get("pages"));
        assertTrue(text().contains("100 mm"));
    }

    @Test
    void theListSaysWhereMeasuresComeFrom() throws Exception {
        Answer answer = run("--list");
        List<?> sheets = (List<?>) FakeCall.of(answer, "sheets").orElseThrow();
        assertEquals(16, sheets.size());
        assertTrue(sheets.stream().map(Map.class::cast).allMatch(sheet -> !String.valueOf(sheet.get("basis"))
                .isBlank()));
        assertTrue(answer.words().contains("from memory, not looked up"), answer.words());
    }

    @Test
    void helpHasAnExample() {
        String help = new CommandLine(new TagsCommand(null)).getUsageMessage();
        assertTrue(help.contains("pippinry tags --program larkmoor --for pollinations --sheet A4-65"), help);
        assertEquals(
                Optional.empty(),
                help.lines().filter(line -> line.contains("DEFAULT")).findFirst());
    }
}
