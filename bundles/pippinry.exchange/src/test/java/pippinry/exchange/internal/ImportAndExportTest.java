package pippinry.exchange.internal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.commandline.Answer;
import pippinry.commandline.CallRefused;
import pippinry.model.Program;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Note;
import pippinry.model.value.Code;

class ImportAndExportTest {

    @TempDir
    private Path files;

    private Path larkmoor;
    private final MemoryStore.Folders folders = new MemoryStore.Folders();
    private final CallInTest call = new CallInTest(folders);

    @BeforeEach
    void newProgram() throws Exception {
        larkmoor = files.resolve("larkmoor");
        call.run(new NewProgram(), larkmoor, "--crop", "apple", "--name", "Larkmoor");
    }

    @Test
    void aNewProgramKnowsItsNameAndCrop() {
        assertEquals(Optional.of("Larkmoor"), program().setting("name"));
        assertEquals(Optional.of("apple"), program().setting("crop"));
    }

    @Test
    void allFilesOfAnImportAreOneEditInAnyOrder() throws Exception {
        Path plants = file("plants.csv", "tag,genotype\nFIE1,FIE\n");
        Path genotypes = file("genotypes.csv", "name,code\nFiesta,FIE\n");
        Answer answer = bring(plants, genotypes);
        assertEquals(2L, answer.json().get("edit"));
        assertEquals("Fiesta", genotype("FIE").name());
        assertEquals("import of 2 files", history(2));
    }

    @Test
    void oneBadRowAndNothingIsStored() throws Exception {
        Path genotypes = file("genotypes.csv", "code,year\nFIE,1972\nELS,2015-02-30\n");
        assertEquals(
                "Nothing was stored: a row is refused.\n" + genotypes
                        + " line 3, column year: '2015-02-30'; expected a date that exists, as 2016-05-14, 2016-05 or"
                        + " 2016, also 'about 2016' or with a time, 2016-05-14T09:30",
                refused(genotypes));
        assertEquals(0, program().table(Kinds.GENOTYPES).size());
        assertEquals(1, program().edit());
    }

    @Test
    void keepingOnStoresTheGoodRowsAndWritesTheBadOnesToMend() throws Exception {
        Path genotypes = file(
                "genotypes.csv",
                "code,ploidy,seed_parent\nFIE,2,\nELS,many,\n26-001-001,2,ELS\n26-001-002,2,26-001-001\n26-001-003,,FIE\n");
        Answer answer = bring(genotypes, "--keep-going");
        assertEquals(2, program().table(Kinds.GENOTYPES).size());
        assertEquals(3L, answer.json().get("refused"));
        Path bad = files.resolve("genotypes.refused.csv");
        assertEquals(List.of(bad.toString()), answer.json().get("refused_files"));
        assertEquals(
                "code,ploidy,seed_parent,refused_line,refused_because\r\n"
                        + "ELS,many,,3,column ploidy: 'many'; expected a whole number\r\n"
                        + "26-001-001,2,ELS,4,column seed_parent: 'ELS'; nothing with this code is on file in genotypes\r\n"
                        + "26-001-002,2,26-001-001,5,column seed_parent: '26-001-001'; nothing with this code is on file"
                        + " in genotypes\r\n",
                Files.readString(bad));
        Files.writeString(bad, Files.readString(bad).replace("many,,3", "2,,3"));
        bring(bad);
        assertEquals(5, program().table(Kinds.GENOTYPES).size());
        assertEquals(0, program().table(Kinds.NOTES).size());
    }

    @Test
    void rowsOnFileJustSoAreLeftAlone() throws Exception {
        Path genotypes = file("genotypes.csv", "code,name\nFIE,Fiesta\n");
        bring(genotypes);
        Answer again = bring(genotypes);
        assertEquals(null, again.json().get("edit"));
        assertEquals(Map.of("added", 0, "changed", 0, "on_file", 1), table(again, "genotypes"));
    }

    @Test
    void rowsWithoutAKeyAreCountedNotDoubled() throws Exception {
        bring(file("genotypes.csv", "code\nFIE\n"), file("scores.csv", "subject,trait,value\nFIE,brix,12.5\n"));
        Path two = file("scores.csv", "subject,trait,value\nFIE,brix,12.5\nFIE,brix,12.50\nFIE,brix,12.5\n");
        assertEquals(Map.of("added", 2, "changed", 0, "on_file", 1), table(bring(two), "scores"));
        assertEquals(3, program().table(Kinds.SCORES).size());
    }

    @Test
    void manyThousandRowsComeInOnce() throws Exception {
        StringBuilder rows = new StringBuilder("subject,trait,value,date\n");
        for (int i = 0; i < 20_000; i++) {
            rows.append("FIE,t")
                    .append(i % 7)
                    .append(',')
                    .append(i % 50)
                    .append(",2024-05-0")
                    .append(1 + i % 9)
                    .append('\n');
        }
        bring(file("genotypes.csv", "code\nFIE\n"));
        Path scores = file("scores.csv", rows.toString());
        assertEquals(Map.of("added", 20_000, "changed", 0, "on_file", 0), table(bring(scores), "scores"));
        assertEquals(Map.of("added", 0, "changed", 0, "on_file", 20_000), table(bring(scores), "scores"));
        Files.writeString(scores, "FIE,t0,gone wrong\n", java.nio.file.StandardOpenOption.APPEND);
        assertTrue(refused(scores).contains(" line 20002: "), "a short row at the end");
    }

    @Test
    void aCodeOnFileWithOtherValuesIsRefusedUnlessUpdated() throws Exception {
        bring(file("genotypes.csv", "code,name,origin\nFIE,Fiesta,bought\n"));
        Path other = file("genotypes.csv", "code,name\nFIE,Festa\n");
        assertTrue(refused(other)
                .contains(
                        " line 2, column code: 'FIE'; this is on file with other values (name 'Fiesta' on file, 'Festa' here);"
                                + " --update would change them"));
        bring(other, "--update");
        assertEquals("Festa", genotype("FIE").name());
        assertEquals("bought", genotype("FIE").origin(), "a column that is missing leaves what is on file");
        bring(file("genotypes.csv", "code,origin\nFIE,\n"), "--update");
        assertEquals("", genotype("FIE").origin(), "an empty cell empties it");
    }

    @Test
    void aNumberGivenTwiceIsNamedWithBothLines() throws Exception {
        Path genotypes = file("genotypes.csv", "code,note\nFIE,\nELS,\"two\nlines\"\nFIE,\n");
        assertTrue(refused(genotypes)
                .contains(genotypes + " line 5, column code: 'FIE'; this stands in " + genotypes + " line 2 already"));
    }

    @Test
    void whatDescendsFromItselfIsRefusedWithItsLines() throws Exception {
        Path genotypes = file("genotypes.csv", "code,seed_parent\nFIE,ELS\nELS,FIE\nCOX,\n");
        String message = refused(genotypes);
        assertTrue(message.contains(" line 2, column seed_parent: 'ELS'; it would descend from itself"), message);
        assertTrue(message.contains(" line 3, column seed_parent: 'FIE'; it would descend from itself"), message);
    }

    @Test
    void columnsOfTheirOwnAreKeptAsNotes() throws Exception {
        Path genotypes = file("genotypes.csv", "code,Vigour\nFIE,strong\nELS,\n");
        Answer answer = bring(genotypes);
        assertEquals(
                List.of(new Note(new pippinry.model.value.Subject("FIE"), Optional.empty(), "Vigour: strong")),
                program().table(Kinds.NOTES).stream().toList());
        assertEquals(
                List.of(genotypes + ": 'Vigour' is no column of genotypes; its one value is kept as notes"),
                answer.json().get("warnings"));
        assertEquals(null, bring(genotypes).json().get("edit"), "a second time brings nothing");
    }

    @Test
    void columnsOfTheirOwnStandInTheNoteOfARowWithoutANumber() throws Exception {
        bring(file("genotypes.csv", "code\nFIE\n"));
        Path scores =
                file("scores.csv", "subject,trait,value,judge mood,note\nFIE,brix,12,good,warm\nFIE,acid,5,poor,\n");
        bring(scores);
        assertEquals(
                List.of("warm; judge mood: good", "judge mood: poor"),
                program().table(Kinds.SCORES).stream()
                        .map(score -> score.note())
                        .toList());
        assertEquals(null, bring(scores).json().get("edit"), "a second time brings nothing");
    }

    @Test
    void aRightCheckCharacterIsTakenOffAndAWrongOneRefused() throws Exception {
        String right = "26-014-073=" + CheckCharacter.of("26-014-073");
        bring(file("genotypes.csv", "code,pollen_parent\n26-014-073,\nFIE,26-014-073\nELS," + right + "|FIE\n"));
        assertEquals(
                List.of("26-014-073", "FIE"),
                genotype("ELS").pollenParent().candidates().stream()
                        .map(Code::text)
                        .toList());
        Path scores =
                file("scores.csv", "subject,trait,value\n26-014-037=" + CheckCharacter.of("26-014-073") + ",brix,12\n");
        assertTrue(refused(scores).endsWith("one sign is wrong; near it on file: 26-014-073"), refused(scores));
    }

    @Test
    void aFileOfAnotherNameIsTakenAsTheTableThatIsNamed() throws Exception {
        Path list = file("row-7.csv", "code\nFIE\n");
        assertTrue(refused(list).contains("'row-7' is no table; name it with --as TABLE, one of: genotypes, names"));
        bring(list, "--as", "genotypes");
        assertEquals(1, program().table(Kinds.GENOTYPES).size());
    }

    @Test
    void exportWritesEveryTableThatHasRowsInTheOrderOfTheirKeys() throws Exception {
        bring(file("genotypes.csv", "code,name\nFIE,Fiesta\nELS,\"Elstar, \"\"red\"\"\"\n"));
        Path out = files.resolve("out");
        call.run(new ExportProgram(List.of()), larkmoor, out);
        assertEquals(
                "code,name,crop,kind,ploidy,seed_parent,pollen_parent,seed_link,pollen_link,link_ground,sport_of,year,"
                        + "origin,note\r\n"
                        + "ELS,\"Elstar, \"\"red\"\"\",,,,,,,,,,,,\r\n"
                        + "FIE,Fiesta,,,,,,,,,,,,\r\n",
                Files.readString(out.resolve("genotypes.csv")));
        assertEquals("key,value\r\ncrop,apple\r\nname,Larkmoor\r\n", Files.readString(out.resolve("settings.csv")));
        try (var list = Files.list(out)) {
            assertEquals(2, list.count());
        }
    }

    @Test
    void nothingIsWrittenOverUnlessSaidSo() throws Exception {
        bring(file("genotypes.csv", "code\nFIE\n"));
        Path out = files.resolve("out");
        call.run(new ExportProgram(List.of()), larkmoor, out);
        CallRefused refused =
                assertThrows(CallRefused.class, () -> call.run(new ExportProgram(List.of()), larkmoor, out));
        assertEquals(out + " is not empty; name a new folder, or add --replace", refused.getMessage());
        Files.writeString(out.resolve("losses.csv"), "stale");
        Files.writeString(out.resolve("letter.txt"), "mine");
        call.run(new ExportProgram(List.of()), larkmoor, out, "--replace");
        assertTrue(Files.notExists(out.resolve("losses.csv")), "a table that is empty now");
        assertTrue(Files.exists(out.resolve("letter.txt")), "what is not ours");
    }

    @Test
    void wordsAreGuardedOnlyForASpreadsheet() throws Exception {
        bring(
                file("genotypes.csv", "code,name,note\nFIE,=1+1,-2.5\nELS,@x,\"\tx\"\n"),
                file("events.csv", "date,lowest_c\n2024,-3.5\n"));
        Path plain = files.resolve("plain");
        Path guarded = files.resolve("guarded");
        call.run(new ExportProgram(List.of()), larkmoor, plain);
        call.run(new ExportProgram(List.of()), larkmoor, guarded, "--for-spreadsheet");
        assertTrue(Files.readString(plain.resolve("genotypes.csv")).contains("FIE,=1+1,"));
        String genotypes = Files.readString(guarded.resolve("genotypes.csv"));
        assertTrue(genotypes.contains("FIE,'=1+1,,,,,,,,,,,,-2.5"), genotypes);
        assertTrue(genotypes.contains("ELS,'@x,,,,,,,,,,,,'\tx"), genotypes);
        assertTrue(Files.readString(guarded.resolve("events.csv")).contains("2024,,,-3.5,"));
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(files.resolve(name), text, UTF_8);
    }

    private Answer bring(Object... arguments) throws Exception {
        Object[] all = new Object[arguments.length + 1];
        all[0] = larkmoor;
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return call.run(new ImportFiles(), all);
    }

    private String refused(Object... arguments) {
        return assertThrows(CallRefused.class, () -> bring(arguments)).getMessage();
    }

    private Program program() {
        return folders.open(larkmoor, call.clock()).now();
    }

    private Genotype genotype(String code) {
        return program().find(Kinds.GENOTYPES, Code.of(code)).orElseThrow();
    }

    private String history(long edit) {
        return folders.open(larkmoor, call.clock())
                .history()
                .get((int) edit - 1)
                .reason();
    }

    private static Object table(Answer answer, String table) {
        return ((Map<?, ?>) answer.json().get("tables")).get(table);
    }
}
