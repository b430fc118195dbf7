package pippinry.nursery.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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
import pippinry.nursery.internal.act.Binding;
import pippinry.nursery.internal.act.NotPossible;

/** Binds a neutral tag to its cross. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=bind", Subcommand.SUMMARY + "=binds a neutral tag to cross, tree and pollen lot"
        })
@Command(
        description = "A neutral tag that was hung in the morning is bound to its cross, tree and pollen lot.",
        footer = {"", "Example:", "  pippinry bind --program larkmoor T-0417 --cross 26-020 --tree FIEA --pollen P26-01"
        })
public final class BindCommand implements Subcommand {

    @Parameters(index = "0", paramLabel = "TAG", description = "The neutral tag, such as T-0417.")
    private String tag;

    @Option(names = "--cross", required = true, paramLabel = "CROSS", description = "The cross it belongs to.")
    private String cross;

    @Option(names = "--tree", paramLabel = "PLANT", description = "The tree or limb it hangs on.")
    private Optional<String> tree = Optional.empty();

    @Option(names = "--pollen", paramLabel = "LOT", description = "The pollen lot that was used.")
    private Optional<String> pollen = Optional.empty();

    @Option(names = "--flowers", paramLabel = "N", description = "How many flowers.")
    private Optional<Integer> flowers = Optional.empty();

    @Activate
    public BindCommand() {}

    @Override
    public Answer run(Call call) throws Exception {
        try {
            ProgramStore store = call.store();
            Binding binding = new Binding(
                    Code.of(tag),
                    Code.of(cross),
                    tree.map(Code::of),
                    pollen.map(Code::of),
                    flowers.map(OptionalInt::of).orElse(OptionalInt.empty()));
            store.apply(binding.in(store.now(), call.author()));
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("tag", tag);
            json.put("cross", cross);
            return Answer.of(json, tag + " is of " + cross + " now");
        } catch (NotPossible e) {
            return Answer.no(Map.of("reason", e.getMessage()), e.getMessage());
        } catch (IllegalArgumentException e) {
            throw new CallRefused(e.getMessage());
        }
    }
}
