package pippinry.season.internal;

import java.time.LocalDate;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.model.ProgramStore;
import pippinry.model.ask.TaskSource;
import pippinry.model.record.Outcome;
import pippinry.season.internal.due.DueList;
import pippinry.season.internal.due.Entry;
import pippinry.season.internal.due.Listing;
import pippinry.season.internal.due.Marking;

/** Tells what is due, and takes note of what was done. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=season", Subcommand.SUMMARY + "=what is due in the next weeks, by batch"})
@Command(
        description = "Lists what is due, oldest first and by batch: what the records call for and tasks of your own.",
        footer = {
            "",
            "Examples:",
            "  pippinry season --program larkmoor --weeks 6",
            "  pippinry season --program larkmoor --done sow:L25-018"
        })
public final class SeasonCommand implements Subcommand {

    private static final int MOST_WEEKS = 520;

    @Option(
            names = "--weeks",
            paramLabel = "N",
            defaultValue = "4",
            description = "How many weeks ahead; ${DEFAULT-VALUE} if it is left out.")
    private int weeks;

    @Option(
            names = "--done",
            paramLabel = "RULE:BATCH",
            description = "Marks this task as done; RULE:BATCH@DUE where several are due.")
    private List<String> done = List.of();

    @Option(names = "--skip", paramLabel = "RULE:BATCH", description = "Marks this task as skipped.")
    private List<String> skipped = List.of();

    private final List<TaskSource> sources;

    @Activate
    public SeasonCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<TaskSource> sources) {
        this.sources = sources;
    }

    @Override
    public Answer run(Call call) throws Exception {
        if (weeks < 0 || weeks > MOST_WEEKS) {
            throw new CallRefused("--weeks " + weeks + ": a whole number from 0 to " + MOST_WEEKS + " is expected");
        }
        mark(call, done, Outcome.DONE);
        mark(call, skipped, Outcome.SKIPPED);
        DueList list = list(call, call.program());
        return Answer.of(Listing.json(list), Listing.words(list));
    }

    private DueList list(Call call, pippinry.model.Program program) {
        LocalDate today = call.today();
        return DueList.of(program, sources, today, today.plusWeeks(weeks));
    }

    private void mark(Call call, List<String> wanted, Outcome outcome) throws Exception {
        for (String some : wanted) {
            ProgramStore store = call.store();
            try {
                Entry entry = Marking.find(list(call, store.now()), some);
                store.apply(Marking.edit(store.now(), entry, outcome, call.today(), call.author()));
            } catch (IllegalArgumentException e) {
                throw new CallRefused(e.getMessage());
            }
        }
    }
}
