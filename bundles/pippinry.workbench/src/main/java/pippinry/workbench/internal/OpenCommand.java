package pippinry.workbench.internal;

import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.panels.Workbench;

/** Opens the window on a program. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=open", Subcommand.SUMMARY + "=the window on a program"})
@Command(
        description = "Opens the window on a program and waits until it is closed.",
        footer = {"", "Example:", "  pippinry open --program larkmoor"})
public final class OpenCommand implements Subcommand {

    private final Workbench workbench;

    @Activate
    public OpenCommand(@Reference Workbench workbench) {
        this.workbench = workbench;
    }

    @Override
    public Answer run(Call call) throws Exception {
        if (!workbench.hasDisplay()) {
            throw new CallRefused("There is no display here to show a window on; the other commands work without one");
        }
        workbench.show(call.store(), call.clock(), call.author(), arguments -> call.run(arguments)
                .words());
        return Answer.of(Map.of("closed", true), "");
    }
}
