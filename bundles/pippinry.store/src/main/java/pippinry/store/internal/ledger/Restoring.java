package pippinry.store.internal.ledger;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;

/** Puts back from the backup what the ledger lost. */
final class Restoring {

    private static final int PIECE = 1 << 16;

    private final LedgerFolder ledger;
    private final LedgerFolder backup;
    private final Disk disk;
    private final SetAside setAside;

    Restoring(Path program, Disk disk, SetAside setAside) {
        this.ledger = LedgerFolder.of(program);
        this.backup = LedgerFolder.backupOf(program);
        this.disk = disk;
        this.setAside = setAside;
    }

    /** What was restored, in words; empty if the backup does not have it either. */
    Optional<String> mend(LedgerScan scan, Flaw flaw) throws IOException {
        LedgerScan copy = LedgerScan.of(backup);
        int segment = flaw.segment();
        long good = copy.goodLength(segment);
        if (good <= flaw.offset() || !continues(copy, scan, segment, flaw.offset())) {
            return Optional.empty();
        }
        Optional<Path> kept = Optional.empty();
        if (Files.exists(ledger.file(segment))) {
            kept = Optional.of(setAside.copy(ledger.file(segment)));
        }
        restore(segment, good);
        String what = flaw.line() == 0 ? "was missing" : "was damaged in line " + flaw.line();
        return Optional.of(ledger.file(segment) + " " + what + " (edit " + flaw.edit()
                + "); it was restored from the backup."
                + kept.map(path -> " The damaged file is kept as " + path + ".").orElse(""));
    }

    /** Whether the backup goes on where the ledger ends: whole lines, or files, are gone from the ledger's end. */
    boolean lostItsEnd(LedgerScan scan) throws IOException {
        List<Integer> copies = backup.segments();
        int lastCopy = copies.isEmpty() ? 0 : copies.get(copies.size() - 1);
        if (lastCopy < scan.last() || lastCopy == scan.last() && backup.length(lastCopy) <= scan.goodLength()) {
            return false;
        }
        LedgerScan copy = LedgerScan.of(backup);
        return copy.edits().size() > scan.edits().size() && continues(copy, scan, scan.last(), scan.goodLength());
    }

    /** Puts the lost end back; says so in words. */
    String end(LedgerScan scan) throws IOException {
        LedgerScan copy = LedgerScan.of(backup);
        for (int segment = scan.last(); segment <= copy.last(); segment++) {
            restore(segment, copy.goodLength(segment));
        }
        return "The ledger ended with edit " + scan.edits().size() + ", but its backup knows "
                + copy.edits().size() + ": the lost edits were restored from the backup.";
    }

    /** Whether both are of the same program and alike up to there. */
    private boolean continues(LedgerScan copy, LedgerScan scan, int segment, long upTo) throws IOException {
        if (copy.last() < segment
                || !copy.sumsBefore().get(segment - 1).equals(scan.sumsBefore().get(segment - 1))) {
            return false;
        }
        if (upTo == 0) {
            return scan.program().isEmpty() || scan.program().equals(copy.program());
        }
        long mismatch = Files.mismatch(backup.file(segment), ledger.file(segment));
        return mismatch < 0 || mismatch >= upTo;
    }

    /** The backup's lines, then what the ledger has beyond them; the old file stays until the new one is on disk. */
    private void restore(int segment, long good) throws IOException {
        Files.createDirectories(ledger.path());
        Path mended = ledger.path().resolve(ledger.file(segment).getFileName() + ".mended");
        try (RandomAccessFile out = disk.open(mended)) {
            out.setLength(0);
            append(out, backup.file(segment), 0, good);
            append(out, ledger.file(segment), good, ledger.length(segment));
            disk.force(out);
        }
        Files.move(mended, ledger.file(segment), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        disk.forceEntries(ledger.path());
    }

    private static void append(RandomAccessFile out, Path from, long start, long end) throws IOException {
        if (end <= start) {
            return;
        }
        try (RandomAccessFile in = new RandomAccessFile(from.toFile(), "r")) {
            in.seek(start);
            byte[] piece = new byte[PIECE];
            for (long at = start; at < end; ) {
                int some = in.read(piece, 0, (int) Math.min(piece.length, end - at));
                out.write(piece, 0, some);
                at += some;
            }
        }
    }
}
