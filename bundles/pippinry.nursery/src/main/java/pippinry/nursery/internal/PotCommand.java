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
import pippinry.nursery.internal.act.NotPossible;
import pippinry.nursery.internal.act.Potting;

/** Gives numbers to seedlings that are potted. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=pot",
            Subcommand.SUMMARY + "=numbers for seedlings that move to pots of their own"
        })
@Command(
        description = "Seedlings of a lot move to pots of their own: each gets the next number of its cross.",
        footer = {"", "Example:", "  pippinry pot --program larkmoor L25-017 --count 26 --on 2026-04-10"})
public final class PotCommand implements Subcommand {

    @Parameters(index = "0", paramLabel = "LOT", description = "The seed lot.")
    private String lot;

    @Option(names = "--count", required = true, paramLabel = "N", description = "How many are potted.")
    private int count;

    @Activate
    public PotCommand() {}

    @Override
    public Answer run(Call call) throws Exception {
        try {
            ProgramStore store = call.store();
            Potting.Plan plan = new Potting(Code.of(lot), count, call.today()).in(store.now(), call.author());
            store.apply(plan.edit());
            return answer(plan);
        } catch (NotPossible e) {
            return Answer.no(Map.of("reason", e.getMessage()), e.getMessage());
        } catch (IllegalArgumentException e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private Answer answer(Potting.Plan plan) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("lot", lot);
        json.put("family", plan.family());
        json.put("numbers", plan.numbers().numbers());
        json.put("skipped", plan.numbers().skipped());
        String first = plan.numbers().numbers().get(0);
        String last = plan.numbers().numbers().get(count - 1);
        String words = count == 1 ? "Potted " + first : "Potted " + first + " to " + last;
        String skipped = plan.numbers().skipped().isEmpty()
                ? ""
                : "\nNever given, for their check would be a star: "
                        + String.join(", ", plan.numbers().skipped());
        return Answer.of(json, words + skipped + "\nNext: tags --for pots --cross " + plan.family());
    }
}
