package pippinry.store.internal.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.model.Settled;
import pippinry.model.StoreFailed;
import pippinry.model.record.Kinds;
import pippinry.store.internal.Rows;

class LedgerTest {

    private static final Instant NOW = Instant.parse("2026-03-27T10:00:00Z");
    private static final long SMALL = 2_000;

    @TempDir
    Path program;

    private Ledger ledger;

    @BeforeEach
    void setUp() throws IOException {
        ledger = opening(new LazyDisk()).create();
    }

    @Test
    void fullFilesAreClosedAndAllAreReadAgain() throws IOException {
        IntStream.rangeClosed(1, 60).forEach(this::append);
        List<Entry> before = ledger.edits(1, 60);
        assertTrue(ledger.end().segment() > 4, ledger.end()::toString);
        ledger.close();
        ledger = opening(new LazyDisk()).open();
        assertEquals(before, ledger.edits(1, 60));
        assertEquals(List.of(change(17)), new EditReader(ledger.folder()).changes(ledger.edit(17)));
    }

    @Test
    void closedFilesNeverChangeAgainAndTheBackupCopiesOnlyWhatIsNew() throws IOException {
        Backup backup = new Backup(program, new LazyDisk(), setAside());
        IntStream.rangeClosed(1, 30).forEach(this::append);
        backup.bringUp(ledger.end());
        Path closed = program.resolve("backup/000001.jsonl");
        Object firstCopy = Files.getLastModifiedTime(closed);
        IntStream.rangeClosed(31, 60).forEach(this::append);
        backup.bringUp(ledger.end());
        new Backup(program, new LazyDisk(), setAside()).bringUp(ledger.end());
        assertEquals(firstCopy, Files.getLastModifiedTime(closed));
        assertBackupIsLikeTheLedger();
    }

    @Test
    void aDamagedBackupIsSetAsideAndMadeAnew() throws IOException {
        append(1);
        append(2);
        new Backup(program, new LazyDisk(), setAside()).bringUp(ledger.end());
        flip(program.resolve("backup/000001.jsonl"), 40);
        append(3);
        new Backup(program, new LazyDisk(), setAside()).bringUp(ledger.end());
        assertBackupIsLikeTheLedger();
        assertTrue(Files.exists(program.resolve("set-aside/000001.jsonl-20260327-100000")));
    }

    @Test
    void anyFileThatIsGoneOrDamagedComesBackFromTheBackup() throws IOException {
        IntStream.rangeClosed(1, 60).forEach(this::append);
        new Backup(program, new LazyDisk(), setAside()).bringUp(ledger.end());
        List<Entry> before = ledger.edits(1, 60);
        int segments = ledger.end().segment();
        ledger.close();
        for (int segment = 1; segment <= segments; segment++) {
            Files.delete(LedgerFolder.of(program).file(segment));
            assertMended(before);
            flip(LedgerFolder.of(program).file(segment), 30);
            assertMended(before);
            try (RandomAccessFile file =
                    new RandomAccessFile(LedgerFolder.of(program).file(segment).toFile(), "rw")) {
                file.setLength(file.length() - 100);
            }
            assertMended(before);
        }
        for (int segment = 2; segment <= segments; segment++) {
            Files.delete(LedgerFolder.of(program).file(segment));
        }
        assertMended(before);
    }

    private void assertMended(List<Entry> before) throws IOException {
        LedgerOpening opening = opening(new LazyDisk());
        ledger = opening.open();
        assertEquals(before, ledger.edits(1, 60));
        assertEquals(1, opening.notices().size(), opening.notices()::toString);
        ledger.close();
    }

    @Test
    void theEndOfAClosedFileIsNeverTakenForTorn() throws IOException {
        IntStream.rangeClosed(1, 20).forEach(this::append);
        ledger.close();
        Path closed = LedgerFolder.of(program).file(1);
        try (RandomAccessFile file = new RandomAccessFile(closed.toFile(), "rw")) {
            file.setLength(file.length() - 10);
        }
        byte[] before = Files.readAllBytes(closed);
        assertThrows(StoreFailed.class, () -> opening(new LazyDisk()).open());
        assertEquals(before.length, Files.size(closed));
    }

    @Test
    void aTornFirstLineOfANextFileIsNoLoss() throws IOException {
        append(1);
        ledger.close();
        for (String torn : new String[] {"", "{\"ledger\":\"pipp"}) {
            Files.writeString(LedgerFolder.of(program).file(2), torn);
            ledger = opening(new LazyDisk()).open();
            assertEquals(1, ledger.last());
            assertEquals(1, ledger.end().segment());
            ledger.close();
        }
    }

    @Test
    void anEditThatDoesNotFitOnTheDiskIsNotThereAndTheNextIs() throws IOException {
        append(1);
        ledger.close();
        FailingDisk disk = new FailingDisk();
        ledger = opening(disk).open();
        disk.room = 50;
        String failed = assertThrows(StoreFailed.class, () -> append(2)).getMessage();
        assertTrue(failed.contains("Edit 2 was not written: the disk is full"), failed);
        assertEquals(1, LedgerScan.of(ledger.folder()).edits().size());
        assertEquals(Optional.empty(), LedgerScan.of(ledger.folder()).flaw());
        disk.room = Integer.MAX_VALUE;
        append(2);
        assertEquals(2, LedgerScan.of(ledger.folder()).edits().size());
    }

    @Test
    void afterAFailedForceNothingMoreIsWrittenUntilItIsOpenedAgain() throws IOException {
        append(1);
        ledger.close();
        FailingDisk disk = new FailingDisk();
        ledger = opening(disk).open();
        disk.forces = false;
        assertThrows(StoreFailed.class, () -> append(2));
        disk.forces = true;
        String failed = assertThrows(StoreFailed.class, () -> append(2)).getMessage();
        assertTrue(failed.contains("open it again"), failed);
        ledger.close();
        ledger = opening(disk).open();
        assertEquals(1, ledger.last());
        append(2);
    }

    private static final class FailingDisk extends Disk {

        private int room = Integer.MAX_VALUE;
        private boolean forces = true;

        @Override
        RandomAccessFile open(Path file) throws java.io.FileNotFoundException {
            return new RandomAccessFile(file.toFile(), "rw") {
                @Override
                public void write(byte[] bytes) throws IOException {
                    int some = Math.min(bytes.length, room);
                    super.write(bytes, 0, some);
                    room -= some;
                    if (some < bytes.length) {
                        throw new IOException("No space left on device");
                    }
                }
            };
        }

        @Override
        void force(RandomAccessFile file) throws IOException {
            if (!forces) {
                throw new IOException("Input/output error");
            }
        }
    }

    private LedgerOpening opening(Disk disk) {
        return new LedgerOpening(program, disk, Clock.fixed(NOW, ZoneOffset.UTC), SMALL);
    }

    private SetAside setAside() {
        return new SetAside(program, Clock.fixed(NOW, ZoneOffset.UTC));
    }

    private void append(int number) {
        ledger.append(
                new EditHead(number, NOW, "IN", "edit " + number, 1, OptionalLong.empty()), List.of(change(number)));
    }

    private static Settled<?> change(int number) {
        return new Settled<>(
                Kinds.GENOTYPES,
                number,
                Optional.empty(),
                Optional.of(Rows.genotype("G_" + number, "Größe \"" + number)));
    }

    private void assertBackupIsLikeTheLedger() throws IOException {
        for (int segment = 1; segment <= ledger.end().segment(); segment++) {
            assertEquals(
                    -1,
                    Files.mismatch(
                            LedgerFolder.of(program).file(segment),
                            LedgerFolder.backupOf(program).file(segment)));
        }
    }

    private static void flip(Path file, int at) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        bytes[at] ^= 1;
        Files.write(file, bytes);
    }
}
