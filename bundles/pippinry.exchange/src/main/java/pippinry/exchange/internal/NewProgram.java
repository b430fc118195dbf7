package pippinry.exchange.internal;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
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
import pippinry.model.Edit;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kinds;
import pippinry.model.record.Setting;
import pippinry.model.value.Code;

/** Makes an empty program. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=new", Subcommand.SUMMARY + "=makes an empty program"})
@Command(
        description = "Makes an empty program in a new folder.",
        footer = {"", "Example:", "  pippinry new larkmoor --crop apple --name Larkmoor"})
public final class NewProgram implements Subcommand {

    @Parameters(index = "0", paramLabel = "DIR", description = "The program folder, empty or not there yet.")
    private Path folder;

    @Option(names = "--crop", required = true, paramLabel = "CROP", description = "What is bred, such as apple.")
    private String crop;

    @Option(names = "--name", paramLabel = "NAME", description = "The program's name; the folder's if not given.")
    private String name;

    @Activate
    public NewProgram() {}

    @Override
    public Answer run(Call call) throws Exception {
        String called = Optional.ofNullable(name)
                .orElseGet(
                        () -> folder.toAbsolutePath().normalize().getFileName().toString());
        if (crop.isBlank() || called.isBlank()) {
            throw new CallRefused("--crop and --name take a word, such as --crop apple --name Larkmoor");
        }
        try (ProgramStore store = call.folders().create(folder, call.clock())) {
            store.apply(Edit.by(call.author(), "new program")
                    .put(Kinds.SETTINGS, new Setting(Code.of("name"), called))
                    .put(Kinds.SETTINGS, new Setting(Code.of("crop"), crop))
                    .done());
        }
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("folder", folder.toString());
        json.put("name", called);
        json.put("crop", crop);
        return Answer.of(
                json,
                "An empty program for " + crop + ", " + called + ", is in " + folder + ".\nNext: 'pippinry import "
                        + folder + " FILE...' brings tables in.");
    }
}
