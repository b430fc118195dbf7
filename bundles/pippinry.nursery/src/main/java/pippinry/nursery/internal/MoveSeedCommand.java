package pippinry.nursery.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.model.ProgramStore;
import pippinry.model.value.Code;
import pippinry.nursery.internal.act.MovingSeed;
import pippinry.nursery.internal.act.NotPossible;

/** Splits a seed lot, or puts lots together. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=move-seed", Subcommand.SUMMARY + "=splits a seed lot, or puts lots together"})
@Command(
        description = {
            "Puts seeds of one lot into another: into a new one to keep them in two places, or into one that is there.",
            "Where they came from stays on file."
        },
        footer = {
            "",
            "Example:",
            "  pippinry move-seed --program larkmoor L25-018 L25-018-2 --seeds 50 --kept 'damp sand'"
        })
public final class MoveSeedCommand implements Subcommand {

    @Parameters(index = "0", paramLabel = "FROM", description = "The lot that gives.")
    private String from;

    @Parameters(index = "1", paramLabel = "TO", description = "The lot that gets them; a new one is made.")
    private String to;

    @Option(names = "--seeds", required = true, paramLabel = "N", description = "How many full seeds.")
    private int seeds;

    @Option(names = "--kept", paramLabel = "HOW", defaultValue = "", description = "How a new lot is kept.")
    private String kept;

    @Option(names = "--mixed", description = "Put seeds of another cross in; the lot has no cross any more.")
    private boolean mixed;

    @Activate
    public MoveSeedCommand() {}

    @Override
    public Answer run(Call call) throws Exception {
        try {
            ProgramStore store = call.store();
            MovingSeed moving = new MovingSeed(Code.of(from), Code.of(to), seeds, call.today(), kept, mixed);
            store.apply(moving.in(store.now(), call.author()));
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("from", from);
            json.put("to", to);
            json.put("seeds", seeds);
            return Answer.of(json, seeds + " seeds of " + from + " are in " + to + " now");
        } catch (NotPossible e) {
            return Answer.no(Map.of("reason", e.getMessage()), e.getMessage());
        } catch (IllegalArgumentException e) {
            throw new CallRefused(e.getMessage());
        }
    }
}
