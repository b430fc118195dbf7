package pippinry.workbench.internal;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.panels.Workbench;

/** One program at a desk: which, whose hand, what is selected, and whether it is looked back at. */
public final class Session {

    private final ProgramStore store;
    private final Clock clock;
    private final String author;
    private final Workbench.Commands commands;
    private final Selection selection = new Selection();
    private Optional<LocalDate> day = Optional.empty();
    private Optional<Program> past = Optional.empty();

    public Session(ProgramStore store, Clock clock, String author, Workbench.Commands commands) {
        this.store = store;
        this.clock = clock;
        this.author = author;
        this.commands = commands;
    }

    public ProgramStore store() {
        return store;
    }

    public Selection selection() {
        return selection;
    }

    public String author() {
        return author;
    }

    /** The program shown: as it stands, or as of the day that is looked back to. */
    public Program program() {
        return past.orElseGet(store::now);
    }

    public LocalDate today() {
        return day.or(() -> store.now().setting("today").map(LocalDate::parse)).orElseGet(() -> LocalDate.now(clock));
    }

    public Optional<LocalDate> lookingBack() {
        return day;
    }

    public void lookBack(Optional<LocalDate> to) {
        day = to;
        past = to.map(store::asOf);
    }

    /** Runs a subcommand on the open program; its answer, or why it has none, in words. */
    public String run(List<String> arguments) {
        try {
            return commands.run(arguments);
        } catch (Exception e) {
            return e.getMessage();
        }
    }
}
