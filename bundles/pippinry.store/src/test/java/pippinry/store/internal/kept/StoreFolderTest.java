package pippinry.store.internal.kept;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Outcome;
import pippinry.model.Program;
import pippinry.model.Settled;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;
import pippinry.store.internal.Rows;
import pippinry.store.internal.ledger.SetAside;

class StoreFolderTest {

    private static final Instant NOW = Instant.parse("2026-03-27T10:00:00Z");

    @TempDir
    Path temp;

    private final Random random = new Random(26);

    @Test
    void whatIsWrittenPieceByPieceIsReadAsOne() throws Exception {
        Program program = Program.empty();
        try (StoreFolder folder = folder(temp, Long.MAX_VALUE / 2)) {
            for (int i = 0; i < 40; i++) {
                program = written(folder, program, someEdit(program, i));
            }
        }
        assertRead(program, temp);
    }

    @Test
    void aCopyIsReadWhileTheFolderIsWrittenAndLeavesNoTrace() throws Exception {
        Program program = Program.empty();
        assertEquals(Optional.empty(), new StoreCopy(temp).load());
        try (StoreFolder folder = folder(temp, Long.MAX_VALUE / 2)) {
            for (int i = 0; i < 5; i++) {
                program = written(folder, program, someEdit(program, i));
                assertLike(program, new StoreCopy(temp).load().orElseThrow().program());
            }
            assertEquals(Optional.empty(), folder(temp.resolve("nobody"), 0).load());
        }
        assertRead(program, temp);
        Path data = temp.resolve("store/graph/channel_0/channel_0_1.dat");
        byte[] bytes = Files.readAllBytes(data);
        bytes[bytes.length / 2] ^= 1;
        Files.write(data, bytes);
        assertEquals(Optional.empty(), new StoreCopy(temp).load());
    }

    @Test
    void aFolderFullOfWhatIsOfNoMoreUseIsWrittenAnew() throws Exception {
        Program program = Program.empty();
        try (StoreFolder folder = folder(temp, 20_000)) {
            for (int i = 0; i < 40; i++) {
                program = written(folder, program, someEdit(program, i));
                assertTrue(size(temp) < 400_000, "edit " + i + ": " + size(temp));
            }
        }
        assertRead(program, temp);
    }

    @Test
    void anOldSnapshotReadsTheSameAfterAllWasWrittenAnew() throws Exception {
        Program program = Program.empty();
        try (StoreFolder folder = folder(temp, 20_000)) {
            program = written(folder, program, someEdit(program, 0));
            program = written(folder, program, someEdit(program, 1));
            Program old = program;
            List<?> before = List.of(
                    old.table(Kinds.GENOTYPES).rows(), old.table(Kinds.SCORES).rows());
            for (int i = 2; i < 40; i++) {
                program = written(folder, program, someEdit(program, i));
            }
            assertEquals(
                    before,
                    List.of(
                            old.table(Kinds.GENOTYPES).rows(),
                            old.table(Kinds.SCORES).rows()));
        }
    }

    /**
     * Nodes and blocks are counted by the bytes that one edit adds to the engine's files: the same at a thousand plants and
     * at a hundred thousand, but for the levels of the tree.
     */
    @Test
    void anEditWritesAsMuchToALargeProgramAsToASmallOne() throws Exception {
        long small = bytesOfAnEdit(1_000);
        long large = bytesOfAnEdit(100_000);
        assertTrue(large < small * 1.5, small + " bytes at 1,000 plants, " + large + " at 100,000");
        assertTrue(large < 20_000, large + " bytes");
    }

    private long bytesOfAnEdit(int plants) throws Exception {
        Path here = Files.createDirectory(temp.resolve("plants" + plants));
        Program program = Program.empty().with(many(plants), 1, NOW);
        try (StoreFolder folder = folder(here, Long.MAX_VALUE / 2)) {
            folder.write(program, Touched.all(program), 17);
            long before = size(here);
            Edit edit = Edit.by("IN", "one of each")
                    .put(Kinds.PLANTS, Rows.plant("P_" + plants / 2, ""))
                    .put(Kinds.SCORES, Rows.score("P_" + plants / 3, "brix", "12.5"))
                    .done();
            written(folder, program, edit);
            return size(here) - before;
        }
    }

    private static List<Settled<?>> many(int plants) {
        List<Settled<?>> many = new ArrayList<>();
        for (int i = 0; i < plants; i++) {
            Plant plant = Rows.row(Kinds.PLANTS, "tag", "P_" + i);
            Score score = Rows.score("P_" + i, "brix", "1" + i % 7 + "." + i % 10);
            many.add(new Settled<>(Kinds.PLANTS, i, Optional.empty(), Optional.of(plant)));
            many.add(new Settled<>(Kinds.SCORES, i, Optional.empty(), Optional.of(score)));
        }
        return many;
    }

    private Edit someEdit(Program program, int number) {
        Edit.Draft draft = Edit.by("IN", "edit " + number);
        for (int i = 0; i < 30; i++) {
            draft.put(Kinds.GENOTYPES, Rows.genotype("G_" + random.nextInt(400), "name " + number + "." + i));
        }
        for (int i = 0; i < 30 && number > 0; i++) {
            int any = random.nextInt(program.table(Kinds.GENOTYPES).nextId());
            String code =
                    program.table(Kinds.GENOTYPES).get(any).orElseThrow().code().text();
            draft.put(Kinds.SCORES, Rows.score(code, "brix", Integer.toString(random.nextInt(300))));
        }
        int scores = program.table(Kinds.SCORES).nextId();
        if (number % 5 == 4) {
            program.table(Kinds.SCORES).rows().stream()
                    .filter(row -> row.id() > scores - 60)
                    .forEach(row -> draft.remove(Kinds.SCORES, row.id()));
        }
        return draft.done();
    }

    private static Program written(StoreFolder folder, Program program, Edit edit) throws EditRefused, IOException {
        Outcome outcome = program.apply(edit, NOW);
        Touched touched = new Touched();
        touched.add(outcome.program(), outcome.changes());
        folder.write(outcome.program(), touched, 17);
        return outcome.program();
    }

    private static StoreFolder folder(Path path, long waste) {
        return new StoreFolder(path, new SetAside(path, Clock.systemUTC()), waste);
    }

    private static void assertRead(Program expected, Path path) {
        try (StoreFolder folder = folder(path, 0)) {
            Optional<Kept> kept = folder.load();
            assertEquals("", folder.amiss());
            assertEquals(17, kept.orElseThrow().sum());
            assertLike(expected, kept.get().program());
        }
    }

    private static void assertLike(Program expected, Program found) {
        for (Kind<?> kind : Kinds.ALL) {
            assertEquals(expected.table(kind).rows(), found.table(kind).rows(), kind.table());
            assertEquals(expected.table(kind).nextId(), found.table(kind).nextId());
        }
    }

    private static long size(Path path) throws IOException {
        try (Stream<Path> files = Files.walk(path.resolve("store/graph"))) {
            return files.filter(Files::isRegularFile)
                    .mapToLong(file -> file.toFile().length())
                    .sum();
        }
    }
}
