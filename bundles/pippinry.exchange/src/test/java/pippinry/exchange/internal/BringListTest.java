package pippinry.exchange.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.commandline.Answer;
import pippinry.commandline.CallRefused;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Note;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;
import pippinry.model.record.Task;
import pippinry.model.value.Code;

class BringListTest {

    @TempDir
    private Path files;

    private Path larkmoor;
    private final MemoryStore.Folders folders = new MemoryStore.Folders();
    private CallInTest call;

    @BeforeEach
    void aProgramWithTwoParents() throws Exception {
        larkmoor = files.resolve("larkmoor");
        call = new CallInTest(folders, larkmoor);
        folders.create(larkmoor, call.clock());
        Files.writeString(files.resolve("genotypes.csv"), "code,name,origin\nFIE,Fiesta,\nGOLD,Golden Delicious,\n");
        Files.writeString(files.resolve("names.csv"), "subject,name\nGOLD,Goldie\n");
        Files.writeString(files.resolve("blocks.csv"), "block\nA\n");
        call.run(
                new ImportFiles(),
                larkmoor,
                files.resolve("genotypes.csv"),
                files.resolve("names.csv"),
                files.resolve("blocks.csv"));
    }

    private Answer bring(String list, Object... options) throws Exception {
        List<Object> all = new ArrayList<>(List.of(Files.writeString(files.resolve("list.csv"), list)));
        all.addAll(Arrays.asList(options));
        return call.run(new BringList(), all.toArray());
    }

    private Program program() {
        return folders.open(larkmoor, call.clock()).now();
    }

    private <T extends Record> List<T> all(Kind<T> kind) {
        return program().table(kind).stream().toList();
    }

    @Test
    void aListOfSeedlingsMakesGenotypesPlantsPlacesScoresAndNotes() throws Exception {
        Answer answer = bring(
                "Number;Mother;Father;Year;Rootstock;Planted;Block;Row;Position;Brix;Vigour\n"
                        + "26-14-73;Fiesta;goldie;2026;M9;14.5.2027;A;1;5;12,5;strong\n"
                        + "26-014-074;FIE;op;2026;;;;;;-;\n",
                "--map",
                "Brix=score:juice.ssc_brix");
        Genotype seedling =
                program().find(Kinds.GENOTYPES, Code.of("26-014-073")).orElseThrow();
        assertEquals("FIE", seedling.seedParent().orElseThrow().text());
        assertEquals("GOLD", seedling.pollenParent().toString());
        Plant plant = program().find(Kinds.PLANTS, Code.of("26-014-073A")).orElseThrow();
        assertEquals("2027-05-14", plant.madeOn().orElseThrow().toString());
        assertEquals("M9", plant.rootstock());
        Occupancy place = all(Kinds.PLACES).get(0);
        assertEquals(
                "26-014-073A A 1 5",
                place.plant() + " " + place.block().orElseThrow() + " " + place.row() + " " + place.place());
        Score score = all(Kinds.SCORES).get(0);
        assertEquals("26-014-073A juice.ssc_brix 12.5", score.subject() + " " + score.trait() + " " + score.value());
        assertEquals(
                List.of("Vigour: strong"),
                all(Kinds.NOTES).stream().map(Note::text).toList());
        assertEquals(
                "op",
                program()
                        .find(Kinds.GENOTYPES, Code.of("26-014-074"))
                        .orElseThrow()
                        .pollenParent()
                        .toString());
        assertEquals(2, answer.json().get("clear"));
        assertEquals(List.of(), all(Kinds.TASKS));
        assertEquals("plants.rootstock", ((Map<?, ?>) answer.json().get("columns")).get("Rootstock"));
        assertEquals("notes", ((Map<?, ?>) answer.json().get("columns")).get("Vigour"));
    }

    @Test
    void whatIsNotClearIsKeptToBeSortedOutWithItsOriginalText() throws Exception {
        Answer answer =
                bring("Number,Mother,Year\n26-014-073,Fiesto,2026\n26-014-074,Fiesta,\n,Fiesta,2026\n26-014-074,,\n");
        assertEquals(1, answer.json().get("clear"));
        assertEquals(3, answer.json().get("to_be_sorted_out"));
        assertEquals(
                List.of(
                        "To be sorted out, row 2: Number: 26-014-073; Mother: Fiesto; Year: 2026 - no 'Fiesto' is on file in"
                                + " genotypes; near it: Fiesta, FIE",
                        "To be sorted out, row 4: Mother: Fiesta; Year: 2026 - there is no number in it",
                        "To be sorted out, row 5: Number: 26-014-074 - column code: '26-014-074'; this stands in "
                                + files.resolve("list.csv") + " line 3 already"),
                all(Kinds.TASKS).stream().map(Task::text).toList());
        assertTrue(all(Kinds.TASKS).stream().allMatch(task -> task.batch().equals("list.csv")));
    }

    @Test
    void aSecondTimeBringsNothing() throws Exception {
        String list = "Number,Mother,Vigour\n26-014-073,Fiesta,strong\n26-014-074,Fiesto,weak\n";
        assertEquals(2L, bring(list).json().get("edit"));
        assertEquals(null, bring(list).json().get("edit"));
    }

    @Test
    void whatIsOnFileIsCompletedAndNeverContradicted() throws Exception {
        bring("Number,Variety,Origin\nFIE,Fiesta,on the land\nGOLD,Golden D.,\n");
        assertEquals(
                "on the land",
                program().find(Kinds.GENOTYPES, Code.of("FIE")).orElseThrow().origin());
        assertEquals(
                "Golden Delicious",
                program().find(Kinds.GENOTYPES, Code.of("GOLD")).orElseThrow().name());
        assertTrue(all(Kinds.TASKS)
                .get(0)
                .text()
                .endsWith("GOLD is on file with name 'Golden Delicious', here it is 'Golden D.'"));
    }

    @Test
    void rowsMayNameEachOtherInAnyOrder() throws Exception {
        bring("Number,Variety,Mother\nX1,,Jewel\nX2,Jewel,\n");
        assertEquals(List.of(), all(Kinds.TASKS));
        assertEquals(
                "X2",
                program()
                        .find(Kinds.GENOTYPES, Code.of("X1"))
                        .orElseThrow()
                        .seedParent()
                        .orElseThrow()
                        .text());
    }

    @Test
    void whatWouldNotHoldTogetherIsSortedOutAndTheRestComesIn() throws Exception {
        Answer answer = bring("Number,Mother\nX1,X2\nX2,X1\nX3,FIE\n");
        assertEquals(2, answer.json().get("to_be_sorted_out"));
        assertTrue(all(Kinds.TASKS).get(0).text().endsWith("it would descend from itself"));
        assertTrue(program().find(Kinds.GENOTYPES, Code.of("X3")).isPresent());
    }

    @Test
    void lookingStoresNothing() throws Exception {
        Answer answer = bring("Number,Mother\nX1,FIE\n", "--look");
        assertEquals(1, program().edit());
        assertEquals(
                List.of("genotypes: code X1; seed_parent FIE"),
                ((Map<?, ?>) ((List<?>) answer.json().get("shown")).get(0)).get("read_as"));
    }

    @Test
    void tenRowsAreShown() throws Exception {
        Answer answer = bring("Number\n" + "X1\nX2\nX3\nX4\nX5\nX6\nX7\nX9\nY1\nY2\nY3\nY4\n", "--look");
        assertEquals(10, ((List<?>) answer.json().get("shown")).size());
    }

    @Test
    void aListOfSomethingElseIsBroughtInToo() throws Exception {
        bring(
                "Cross,Mother,Father\n26-014,Fiesta,GOLD\n",
                "--as",
                "crosses",
                "--map",
                "Cross=code",
                "--map",
                "Mother=seed_parent",
                "--map",
                "Father=pollen_parent");
        assertEquals(
                "GOLD",
                program()
                        .find(Kinds.CROSSES, Code.of("26-014"))
                        .orElseThrow()
                        .pollenParent()
                        .toString());
    }

    @Test
    void aColumnOrFieldThatIsNotThereIsNamed() {
        assertEquals(
                "--map: the list has no column 'Mum'; it has: Number",
                assertThrows(CallRefused.class, () -> bring("Number\nX1\n", "--map", "Mum=seed_parent"))
                        .getMessage());
        assertTrue(assertThrows(CallRefused.class, () -> bring("Number\nX1\n", "--map", "Number=mum"))
                .getMessage()
                .startsWith("--map: 'mum' is no field; name it as genotypes.COLUMN"));
    }
}
