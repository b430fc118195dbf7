package pippinry.model;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * An open program: the one place where it is read and changed. Safe for any thread; readers never wait.
 *
 * <p>When {@link #apply} returns, the edit is on disk. Every edit stays on the record: taking one back adds another.
 */
@ProviderType
public interface ProgramStore extends AutoCloseable {

    /** Event topic on the bus; properties are {@link #EVENT_FOLDER}, {@link #EVENT_EDIT}, {@link #EVENT_TABLES}. */
    String CHANGED = "pippinry/program/CHANGED";

    /** The program folder, as text. */
    String EVENT_FOLDER = "folder";
    /** The number of the edit, a Long. */
    String EVENT_EDIT = "edit";
    /** Names of the tables that changed, a String[]. */
    String EVENT_TABLES = "tables";
    /** Keys of the records that changed, a String[]; the first thousand of a large edit. */
    String EVENT_KEYS = "keys";

    Path folder();

    /** Whether this one may only be read, because another process has the program open. */
    boolean readOnly();

    /** The program as it stands. */
    Program now();

    /** The program as it stood at the end of that day, by the clock of the place. */
    Program asOf(LocalDate day);

    /**
     * Applies the edit whole, or nothing of it.
     *
     * @throws EditRefused if the program would not hold together
     * @throws StoreFailed if it could not be written; nothing of it is then on file
     */
    HistoryLine apply(Edit edit) throws EditRefused;

    /** Every edit from the first on. */
    List<HistoryLine> history();

    /** What the edit changed, with what stood there before. */
    List<Settled<?>> changesOf(long edit);

    /** The edit that {@link #undo} would take back next; empty if there is none. */
    Optional<HistoryLine> undoable();

    /** The edit taken back that {@link #redo} would bring again; empty after any other edit. */
    Optional<HistoryLine> redoable();

    /** Takes back this edit, by another that is its reverse. @throws EditRefused if later edits changed the same records */
    HistoryLine takeBack(long edit, String author) throws EditRefused;

    /** Takes back the last edit that is not taken back. @throws EditRefused if there is none */
    HistoryLine undo(String author) throws EditRefused;

    /** Brings again what was taken back last. @throws EditRefused if there is nothing, or other edits came between */
    HistoryLine redo(String author) throws EditRefused;

    /** What was found and mended when the program was opened, in words for the person; usually empty. */
    List<String> notices();

    @Override
    void close();
}
