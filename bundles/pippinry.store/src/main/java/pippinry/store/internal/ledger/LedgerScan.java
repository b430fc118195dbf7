package pippinry.store.internal.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a ledger from end to end, checks every sum and lists the edits, up to the first flaw if there is one. */
final class LedgerScan {

    private final LedgerFolder folder;
    private final LineParser parser = new LineParser();
    private final List<Entry> edits = new ArrayList<>();
    private final List<Integer> sumsBefore = new ArrayList<>();
    private String program;
    private int last;
    private int sum = Chain.START;
    private long goodLength;
    private int goodSum = Chain.START;
    private Entry open;
    private int openParts;
    private Optional<Flaw> flaw = Optional.empty();

    private LedgerScan(LedgerFolder folder) {
        this.folder = folder;
    }

    /** @throws pippinry.model.StoreFailed if a newer version wrote it */
    static LedgerScan of(LedgerFolder folder) throws IOException {
        LedgerScan scan = new LedgerScan(folder);
        List<Integer> segments = folder.segments();
        int count = segments.isEmpty() ? 1 : segments.get(segments.size() - 1);
        for (int segment = 1; segment <= count && scan.flaw.isEmpty(); segment++) {
            scan.read(segment, segment == count);
        }
        return scan;
    }

    private void read(int segment, boolean isLast) throws IOException {
        last = segment;
        goodLength = 0;
        goodSum = sum;
        sumsBefore.add(sum);
        if (!Files.exists(folder.file(segment))) {
            flaw = Optional.of(new Flaw(segment, 0, 0, nextEdit(), false));
            return;
        }
        try (RawLines raw = new RawLines(folder.file(segment), 0)) {
            while (flaw.isEmpty() && raw.next()) {
                if (!take(raw)) {
                    flaw = Optional.of(flawAt(raw, isLast));
                }
            }
            if (flaw.isEmpty() && (open != null || goodLength == 0)) {
                flaw = Optional.of(new Flaw(segment, raw.number(), goodLength, nextEdit(), isLast));
            }
        }
        open = null;
    }

    /** False if the line is not what must stand here. */
    private boolean take(RawLines raw) throws IOException {
        if (raw.number() == 1) {
            NewerFormat.check(folder.file(last), raw, sum);
        }
        if (!raw.whole() || !Chain.holds(sum, raw.bytes(), raw.from(), raw.to())) {
            return false;
        }
        int before = sum;
        sum = (int) Chain.stated(raw.bytes(), raw.from(), raw.to());
        boolean fits = fits(raw);
        if (!fits) {
            sum = before;
        } else if (open == null) {
            goodLength = raw.end();
            goodSum = sum;
        }
        return fits;
    }

    private boolean fits(RawLines raw) throws IOException {
        Line line;
        try {
            line = parser.head(raw.bytes(), raw.from(), raw.to());
        } catch (IOException e) {
            return false;
        }
        if (raw.number() == 1) {
            return line instanceof Line.Header header && begins(header.head());
        }
        if (line instanceof Line.Whole edit) {
            return open == null && add(entry(edit.head(), raw));
        }
        if (line instanceof Line.Begin begin) {
            return open == null && open(entry(begin.head(), raw));
        }
        if (line instanceof Line.Part part) {
            return open != null && part.of() == open.head().number() && part.part() == ++openParts;
        }
        return line instanceof Line.Commit commit && closes(commit);
    }

    private boolean begins(SegmentHead head) {
        boolean fits = head.segment() == last && (program == null || program.equals(head.program()));
        program = fits ? head.program() : program;
        return fits;
    }

    private Entry entry(EditHead head, RawLines raw) {
        return new Entry(head, last, raw.offset(), sum);
    }

    private boolean add(Entry entry) {
        return entry.head().number() == nextEdit() && edits.add(entry);
    }

    private boolean open(Entry entry) {
        open = entry;
        openParts = 0;
        return entry.head().number() == nextEdit();
    }

    private boolean closes(Line.Commit commit) {
        if (open == null || commit.edit() != open.head().number() || commit.parts() != openParts) {
            return false;
        }
        edits.add(new Entry(open.head(), open.segment(), open.offset(), sum));
        open = null;
        return true;
    }

    /**
     * A line that is wrong is the torn end of the last write if no confirmed edit can stand behind it. Only the parts of
     * a large edit are written without being forced, and never its commit before them.
     */
    private Flaw flawAt(RawLines raw, boolean isLast) throws IOException {
        int line = raw.number();
        boolean torn = isLast;
        while (torn && raw.next()) {
            torn = !raw.startsWith("{\"edit\":") && !raw.startsWith("{\"begin\":") && !raw.startsWith("{\"commit\":");
        }
        return new Flaw(last, line, goodLength, nextEdit(), torn);
    }

    private long nextEdit() {
        return edits.size() + 1L;
    }

    List<Entry> edits() {
        return edits;
    }

    /** Which program it is of; empty if not even the first line can be read. */
    Optional<String> program() {
        return Optional.ofNullable(program);
    }

    /** Number of the last file; 0 if there is none. */
    int last() {
        return last;
    }

    /** Of the last file, up to the end of its last good edit. */
    long goodLength() {
        return goodLength;
    }

    /** At the end of the last good edit. */
    int goodSum() {
        return goodSum;
    }

    /** For each file the sum at the end of the one before. */
    List<Integer> sumsBefore() {
        return sumsBefore;
    }

    /** Up to where a file is good; 0 for one that was not reached. */
    long goodLength(int segment) throws IOException {
        if (segment == last) {
            return goodLength;
        }
        return segment < last ? folder.length(segment) : 0;
    }

    Optional<Flaw> flaw() {
        return flaw;
    }
}
