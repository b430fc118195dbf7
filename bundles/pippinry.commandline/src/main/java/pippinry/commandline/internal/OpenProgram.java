package pippinry.commandline.internal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import pippinry.commandline.CallRefused;
import pippinry.model.Program;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;

/** The program that a call works on, opened when it is first asked for. */
final class OpenProgram implements AutoCloseable {

    private final Optional<Path> folder;
    private final Optional<LocalDate> asOf;
    private final ProgramFolders folders;
    private final Clock clock;
    private boolean borrowed;
    private ProgramStore store;

    OpenProgram(Optional<Path> folder, Optional<LocalDate> asOf, ProgramFolders folders, Clock clock) {
        this(folder, asOf, folders, clock, null);
    }

    private OpenProgram(
            Optional<Path> folder, Optional<LocalDate> asOf, ProgramFolders folders, Clock clock, ProgramStore lent) {
        this.folder = folder;
        this.asOf = asOf;
        this.folders = folders;
        this.clock = clock;
        this.borrowed = lent != null;
        this.store = lent;
    }

    /**
     * The program of a call within this one: the same store if it is open and the same program is meant.
     *
     * @param named the folder that the inner call names; null if it names none
     */
    OpenProgram within(Path named, Optional<LocalDate> day) {
        boolean same = named == null
                || folder.filter(own -> place(own).equals(place(named))).isPresent();
        Optional<Path> inner = same ? folder : Optional.of(named);
        return new OpenProgram(inner, day, folders, clock, same ? store : null);
    }

    /** However the folder was written. */
    private static Path place(Path folder) {
        return folder.toAbsolutePath().normalize();
    }

    Path folder() throws CallRefused {
        return folder.orElseThrow(() -> new CallRefused("Which program? Name its folder with --program DIR"));
    }

    boolean isNamed() {
        return folder.isPresent();
    }

    Program read() throws CallRefused {
        if (store == null) {
            store = folders.openToRead(folder(), clock);
        }
        return asOf.map(store::asOf).orElseGet(store::now);
    }

    ProgramStore write() throws CallRefused {
        if (asOf.isPresent()) {
            throw new CallRefused("The program as it stood on " + asOf.get() + " can be looked at but not changed");
        }
        if (store != null && store.readOnly()) {
            // A lent one is left to its owner.
            close();
            store = null;
            borrowed = false;
        }
        if (store == null) {
            store = folders.open(folder(), clock);
        }
        return store;
    }

    /** A store that was lent stays open. */
    @Override
    public void close() {
        if (store != null && !borrowed) {
            store.close();
            store = null;
        }
    }
}
