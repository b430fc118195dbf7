package pippinry.store.internal.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pippinry.model.StoreFailed;

/** Opens the ledger of a program folder, and mends what a power cut or a bad disk did to it. */
public final class LedgerOpening {

    private final Path program;
    private final LedgerFolder folder;
    private final Disk disk;
    private final Clock clock;
    private final long full;
    private final List<String> notices = new ArrayList<>();

    public LedgerOpening(Path program, Disk disk, Clock clock) {
        this(program, disk, clock, Ledger.FULL);
    }

    /** @param full length at which a file is closed */
    LedgerOpening(Path program, Disk disk, Clock clock, long full) {
        this.program = program;
        this.folder = LedgerFolder.of(program);
        this.disk = disk;
        this.clock = clock;
        this.full = full;
    }

    /** Makes an empty ledger. */
    public Ledger create() throws IOException {
        Files.createDirectories(folder.path());
        Ledger.begin(folder, clock.instant(), disk);
        disk.forceEntries(program);
        return new Ledger(folder, LedgerScan.of(folder), disk, full);
    }

    /** @throws StoreFailed if a newer version wrote it, or a line is damaged that no backup has */
    public Ledger open() throws IOException {
        LedgerScan scan = LedgerScan.of(folder);
        while (scan.flaw().isPresent()) {
            mend(scan, scan.flaw().get());
            scan = LedgerScan.of(folder);
        }
        Restoring restoring = restoring();
        if (restoring.lostItsEnd(scan)) {
            notices.add(restoring.end(scan));
            return open();
        }
        return new Ledger(folder, scan, disk, full);
    }

    /** Reads what is there and changes nothing; an unfinished end is passed over, damage ends it. */
    public Edits read() throws IOException {
        LedgerScan scan = LedgerScan.of(folder);
        scan.flaw()
                .filter(flaw -> !flaw.torn())
                .ifPresent(flaw -> notices.add(where(flaw) + " (edit " + flaw.edit()
                        + "): the program is shown as of edit " + (flaw.edit() - 1)
                        + ". Open it to write, and it is mended if the backup has this edit."));
        return new EditList(folder, List.copyOf(scan.edits()));
    }

    /** What was mended, in words. */
    public List<String> notices() {
        return notices;
    }

    private Restoring restoring() {
        return new Restoring(program, disk, new SetAside(program, clock));
    }

    private void mend(LedgerScan scan, Flaw flaw) throws IOException {
        Optional<String> restored = restoring().mend(scan, flaw);
        if (restored.isPresent()) {
            notices.add(restored.get());
        } else if (flaw.torn()) {
            cutOff(flaw);
        } else {
            throw damaged(flaw);
        }
    }

    private void cutOff(Flaw flaw) throws IOException {
        byte[] torn = tail(folder.file(flaw.segment()), flaw.offset());
        if (flaw.offset() > 0) {
            Path kept = new SetAside(program, clock).keep("ledger-end", torn);
            SegmentFile.resume(folder.file(flaw.segment()), flaw.offset(), 0, disk)
                    .close();
            notices.add("Edit " + flaw.edit() + " was not finished when the program last stopped; it is not on file. "
                    + "What had been written of it was cut off the ledger and is kept as " + kept + ".");
        } else if (flaw.segment() > 1) {
            Files.delete(folder.file(flaw.segment()));
            disk.forceEntries(folder.path());
        } else {
            Ledger.begin(folder, clock.instant(), disk);
        }
    }

    private static byte[] tail(Path file, long offset) throws IOException {
        try (var in = Files.newInputStream(file)) {
            in.skipNBytes(offset);
            return in.readAllBytes();
        }
    }

    private StoreFailed damaged(Flaw flaw) {
        return new StoreFailed(
                where(flaw) + " (edit " + flaw.edit() + "), and the backup in " + program.resolve("backup")
                        + " does not have it. Nothing was changed. Put a copy of this file from elsewhere in its place; or open the"
                        + " program to read only, which shows it as of edit " + (flaw.edit() - 1) + ".");
    }

    private String where(Flaw flaw) {
        Path file = folder.file(flaw.segment());
        return flaw.line() == 0 ? file + " is missing" : "Line " + flaw.line() + " of " + file + " is damaged";
    }
}
