package pippinry.commandline.internal;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.model.ProgramFolders;

/** Where the launcher hands over the command line; only JDK types pass, for it shares no others with bundles. */
@Component(service = ToIntFunction.class, property = "pippinry.entry:Boolean=true")
public final class Entry implements ToIntFunction<Object> {

    /** The launcher then starts the bundles that it left out, and calls again. */
    private static final int NEEDS_THE_REST = -1;

    private final Commands commands;
    private final ProgramFolders folders;

    @Activate
    public Entry(
            BundleContext context,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    ProgramFolders folders) {
        this.commands = new CommandServices(context);
        this.folders = folders == null ? new NoFolders() : folders;
    }

    @Override
    public int applyAsInt(Object call) {
        Map<?, ?> given = (Map<?, ?>) call;
        List<String> arguments = List.of((String[]) given.get("args"));
        if (Boolean.FALSE.equals(given.get("whole")) && !reckons(arguments)) {
            return NEEDS_THE_REST;
        }
        Surroundings around = new Surroundings(
                (Path) given.get("image"),
                (InputStream) given.get("in"),
                (PrintStream) given.get("out"),
                (PrintStream) given.get("err"),
                Boolean.TRUE.equals(given.get("terminal")),
                Clock.systemDefaultZone(),
                System.getProperty("user.name", "me"));
        return new Runner(commands, folders, around).run(arguments);
    }

    /** A command that needs no program needs no other module either. */
    private boolean reckons(List<String> arguments) {
        return !arguments.isEmpty() && commands.reckons(arguments.get(0));
    }
}
