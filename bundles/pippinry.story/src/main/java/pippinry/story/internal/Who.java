package pippinry.story.internal;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.Subcommand;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.TaskSource;
import pippinry.story.internal.number.DueWork;
import pippinry.story.internal.number.Looked;
import pippinry.story.internal.number.Lookup;
import pippinry.story.internal.number.Story;
import pippinry.story.internal.number.StoryJson;
import pippinry.story.internal.number.StoryWords;

/** Tells everything about one number. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=who", Subcommand.SUMMARY + "=everything about one number"})
@Command(
        description = {
            "Tells everything on file about one number: a genotype, plant, cross, pollination, seed lot, sample, row or block.",
            "An old tag or a name does too, and a place as BLOCK/ROW/PLACE."
        },
        footer = {
            "",
            "Examples:",
            "  pippinry who --program larkmoor 26-014-073=Y",
            "  pippinry who --program larkmoor Fiesta",
            "  pippinry who --program larkmoor A/7/9"
        })
public final class Who implements Subcommand {

    @Parameters(
            index = "0..*",
            arity = "1..*",
            paramLabel = "NUMBER",
            description = "The number, with or without its check character, or a name.")
    private List<String> words;

    private final List<TaskSource> sources;

    @Activate
    public Who(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<TaskSource> sources) {
        this.sources = sources;
    }

    @Override
    public Answer run(Call call) throws Exception {
        Program program = call.program();
        Looked looked = new Lookup(program).look(String.join(" ", words));
        if (looked instanceof Looked.Found found) {
            Story story = new Story(program, found);
            List<DueTask> due = new DueWork(sources).about(story, call.today());
            return Answer.of(StoryJson.of(story, due), StoryWords.of(story, due));
        }
        if (looked instanceof Looked.Several several) {
            return Answer.no(
                    StoryJson.of(several),
                    "Several are called " + several.name() + ": " + String.join(", ", several.keys()));
        }
        Looked.Missing missing = (Looked.Missing) looked;
        String near = missing.nearest().isEmpty() ? "" : "\nNear it on file: " + String.join(", ", missing.nearest());
        return Answer.no(StoryJson.of(missing), missing.typed() + ": " + missing.because() + "." + near);
    }
}
