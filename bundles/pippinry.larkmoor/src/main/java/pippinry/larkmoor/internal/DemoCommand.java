package pippinry.larkmoor.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
import pippinry.larkmoor.internal.Larkmoor.NotTheDemo;
import pippinry.model.ProgramStore;
import pippinry.model.ask.TableReader;
import pippinry.panels.Workbench;

/** Shows a whole program at work. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=demo",
            Subcommand.SUMMARY + "=a whole program to look at, with season book and tags"
        })
@Command(
        description = {
            "Brings in Larkmoor, an invented program of fifteen years, and opens the window on it. Without a display, or with",
            "--headless, it writes the season book and this spring's tags to a folder. The second time the same program is",
            "used again; --fresh starts over."
        },
        footer = {"", "Example:", "  pippinry demo --headless --out larkmoor-book"})
public final class DemoCommand implements Subcommand {

    @Option(names = "--headless", description = "Write the season book and tags instead of opening the window.")
    private boolean headless;

    @Option(names = "--out", paramLabel = "DIR", description = "Where to write; beside the demo program if left out.")
    private Path out;

    @Option(names = "--fresh", description = "Start over: what was changed in the demo program is lost.")
    private boolean fresh;

    private final TableReader reader;
    private final Workbench workbench;

    @Activate
    public DemoCommand(
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    TableReader reader,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Workbench workbench) {
        this.reader = reader;
        this.workbench = workbench;
    }

    @Override
    public Answer run(Call call) throws Exception {
        Path folder = folder(call);
        bringIn(call, folder);
        if (!headless && workbench != null && workbench.hasDisplay()) {
            return call.run(List.of("open", "--program", folder.toString()));
        }
        Path paper = out == null ? folder.resolveSibling(folder.getFileName() + "-book") : out.toAbsolutePath();
        return new Paper(call, folder, paper).write();
    }

    private static Path folder(Call call) {
        try {
            return call.folder().toAbsolutePath().normalize();
        } catch (CallRefused e) {
            // None was named.
            return OwnFolder.here().path().resolve("demo");
        }
    }

    private void bringIn(Call call, Path folder) throws Exception {
        if (reader == null) {
            throw new CallRefused("The demo is made of plain tables, and the module that reads them is not there");
        }
        Larkmoor larkmoor = new Larkmoor(call.image().resolve("demo"), call.folders(), reader);
        try {
            if (fresh) {
                larkmoor.startOver(folder, call.clock());
            }
            if (call.folders().isProgram(folder)) {
                requireDemo(call, folder);
            } else {
                requireEmpty(folder);
                larkmoor.bringInto(folder, call.clock(), call::progress);
            }
        } catch (NotTheDemo e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private static void requireDemo(Call call, Path folder) throws NotTheDemo {
        try (ProgramStore store = call.folders().openToRead(folder, call.clock())) {
            Larkmoor.requireDemo(store, folder);
        }
    }

    private static void requireEmpty(Path folder) throws IOException, CallRefused {
        if (Files.isDirectory(folder)) {
            try (var files = Files.list(folder)) {
                if (files.findAny().isPresent()) {
                    throw new CallRefused(folder + " holds files of yours; name an empty folder for the demo");
                }
            }
        }
    }
}
