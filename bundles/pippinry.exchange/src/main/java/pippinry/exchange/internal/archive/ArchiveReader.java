package pippinry.exchange.internal.archive;

import com.fasterxml.jackson.core.JacksonException;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.DoubleConsumer;
import pippinry.exchange.internal.tables.FileRefused;
import pippinry.exchange.internal.tables.Refusal;
import pippinry.exchange.internal.tables.TextFile;
import pippinry.model.record.CellRefused;

/** Reads an archive from its first line to its last, and makes sure that it is whole. */
public final class ArchiveReader {

    private final Path file;

    public ArchiveReader(Path file) {
        this.file = file;
    }

    /** What is done with the lines. */
    public interface Taker {

        void head(ArchiveHead head) throws FileRefused;

        /** @param number physical line, for a message */
        void line(long number, ArchiveLine line) throws FileRefused;
    }

    /** Whether the file begins as an archive does. */
    public static boolean isArchive(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        byte[] wanted = ("{\"format\":\"" + ArchiveHead.FORMAT + "\"").getBytes(StandardCharsets.UTF_8);
        try (InputStream in = Files.newInputStream(file)) {
            return java.util.Arrays.equals(in.readNBytes(wanted.length), wanted);
        }
    }

    /** @param progress bytes read so far */
    public void read(Taker taker, DoubleConsumer progress) throws FileRefused {
        try (TextFile text = TextFile.open(file)) {
            BufferedReader lines = text.lines();
            ArchiveHead head = head(lines.readLine());
            taker.head(head);
            Whole whole = new Whole(head);
            long number = 1;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                ArchiveLine read = parsed(line, ++number);
                whole.check(number, read);
                taker.line(number, read);
                progress.accept(text.passed());
            }
            whole.checkEnd(number);
        } catch (IOException e) {
            throw TextFile.refused(file, e);
        }
    }

    private ArchiveHead head(String line) throws FileRefused {
        try {
            ArchiveHead head = LineParser.head(String.valueOf(line));
            if (!head.format().equals(ArchiveHead.FORMAT) || head.version() < 1) {
                throw refused(1, "this is no archive of a program");
            }
            if (head.version() > ArchiveHead.VERSION) {
                throw refused(
                        1,
                        "this archive is of version " + head.version() + ", written by a newer Pippinry; this one reads"
                                + " up to version " + ArchiveHead.VERSION);
            }
            return head;
        } catch (IOException e) {
            throw refused(1, "this is no archive of a program (" + said(e) + ")");
        }
    }

    private ArchiveLine parsed(String line, long number) throws FileRefused {
        try {
            return LineParser.line(line);
        } catch (CellRefused e) {
            throw new FileRefused(new Refusal(file, number, e.column(), e.value(), "expected " + e.expected()));
        } catch (IOException e) {
            throw refused(number, "this is no line of an archive: " + said(e));
        }
    }

    private static String said(IOException e) {
        return e instanceof JacksonException json ? json.getOriginalMessage() : e.getMessage();
    }

    private FileRefused refused(long line, String reason) {
        return new FileRefused(Refusal.ofRow(file, line, reason));
    }

    /** Counts edits and what they changed, for an archive may have been cut off or put together wrongly. */
    private final class Whole {

        private final ArchiveHead head;
        private long edits;
        private int awaited;

        Whole(ArchiveHead head) {
            this.head = head;
        }

        void check(long number, ArchiveLine line) throws FileRefused {
            if (line instanceof ArchiveLine.Edited edit) {
                if (edit.number() != ++edits || awaited > 0) {
                    throw refused(number, "edit " + edit.number() + " stands where it does not follow");
                }
                awaited = edit.records();
            } else if (line instanceof ArchiveLine.Changed changed) {
                if (changed.of() != edits || awaited-- <= 0) {
                    throw refused(number, "this change does not belong to the edit before it");
                }
            } else if (edits > 0) {
                throw refused(number, "a record stands below the history");
            }
        }

        void checkEnd(long number) throws FileRefused {
            if (edits != head.edits() || awaited > 0) {
                throw refused(
                        number, "the archive ends here and is not whole: " + head.edits() + " edits are announced");
            }
        }
    }
}
