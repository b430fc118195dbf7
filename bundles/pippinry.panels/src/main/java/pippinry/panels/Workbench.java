package pippinry.panels;

import java.time.Clock;
import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.ProgramStore;

/** The window; offered as a service where there is one. */
@ProviderType
public interface Workbench {

    /** Whether a window can be shown here. */
    boolean hasDisplay();

    /**
     * Shows the program and returns when the person has closed the window; the store stays open.
     *
     * @param run what a panel calls to run a subcommand on the open program
     */
    void show(ProgramStore store, Clock clock, String author, Commands run) throws InterruptedException;

    /** Runs a subcommand on the open program and gives its answer in words. */
    @FunctionalInterface
    interface Commands {
        String run(java.util.List<String> arguments) throws Exception;
    }
}
