package pippinry.panels;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ProgramStore;

/** What a panel may use of the window around it. */
@ProviderType
public interface PanelContext {

    /** The program shown: as it stands, or as of the day the person looks back to. */
    Program program();

    ProgramStore store();

    /** The program's own today, else the computer's. */
    LocalDate today();

    /** Initials of the person at the desk. */
    String author();

    /** The number selected anywhere in the window. */
    Optional<String> selected();

    /** Selects a number everywhere. */
    void select(String number);

    /** Applies the edit; a refusal is told to the person. @return whether it was applied */
    boolean apply(Edit edit);

    /**
     * Works off the event thread, with progress and a way to cancel, and shows the result on it.
     *
     * @param work gets a snapshot and a progress to report to
     */
    <V> void work(String what, Function<Progress, V> work, Consumer<V> show);

    /** Asks for a file to write to; empty if the person thinks better of it. */
    Optional<java.nio.file.Path> chooseFile(String title, String suggestion);

    /** Says something short to the person. */
    void say(String text);

    /** Brings the panel with this id to the front. */
    void show(String panelId);

    /** Runs a subcommand of the program on the open one, such as {@code tags}; its answer is told to the person. */
    void run(java.util.List<String> arguments);

    /** The colours of the window as it looks now. */
    Palette palette();
}
