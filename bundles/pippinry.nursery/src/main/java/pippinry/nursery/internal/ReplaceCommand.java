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
import pippinry.model.record.PlantStatus;
import pippinry.model.value.Code;
import pippinry.model.value.Word;
import pippinry.nursery.internal.act.NotPossible;
import pippinry.nursery.internal.act.Replacing;

/** Lets a copy take the place of a lost plant. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=replace", Subcommand.SUMMARY + "=a copy takes the place of a lost plant"})
@Command(
        description = "A plant is lost and its copy takes its place: end and cause, both places, in one action.",
        footer = {"", "Example:", "  pippinry replace --program larkmoor 20-012-087B 20-012-087C --cause vole"})
public final class ReplaceCommand implements Subcommand {

    @Parameters(index = "0", paramLabel = "LOST", description = "The plant that is gone.")
    private String lost;

    @Parameters(index = "1", paramLabel = "COPY", description = "The living copy that takes its place.")
    private String copy;

    @Option(names = "--cause", required = true, paramLabel = "CAUSE", description = "Why, such as vole or wind.")
    private String cause;

    @Option(
            names = "--end",
            paramLabel = "END",
            defaultValue = "dead",
            description = "What became of it: dead, grubbed, lost or given; ${DEFAULT-VALUE} if it is left out.")
    private String end;

    @Activate
    public ReplaceCommand() {}

    @Override
    public Answer run(Call call) throws Exception {
        PlantStatus status = Word.find(PlantStatus.class, end)
                .orElseThrow(() -> new CallRefused("--end " + end + ": one of " + Word.list(PlantStatus.class)));
        try {
            ProgramStore store = call.store();
            Replacing replacing = new Replacing(Code.of(lost), Code.of(copy), status, cause, call.today());
            store.apply(replacing.in(store.now(), call.author()));
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("lost", lost);
            json.put("copy", copy);
            json.put("cause", cause);
            return Answer.of(json, copy + " stands where " + lost + " stood (" + status.word() + ": " + cause + ")");
        } catch (NotPossible e) {
            return Answer.no(Map.of("reason", e.getMessage()), e.getMessage());
        } catch (IllegalArgumentException e) {
            throw new CallRefused(e.getMessage());
        }
    }
}
