package pippinry.commandline.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;

/** Runs another command on the program as it stood at the end of a day. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=asof",
            Subcommand.SUMMARY + "=the same command on the program as it stood at the end of a day"
        })
@Command(
        description = "Runs another command on the program as it stood at the end of a day.",
        footer = {"", "Example:", "  pippinry asof --program larkmoor 2024-11-30 who 19-004-031"})
public final class AsOf implements Subcommand {

    @Parameters(index = "0", paramLabel = "DATE", description = "The day, as 2024-11-30.")
    private LocalDate day;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "COMMAND", description = "The command with its options.")
    private List<String> command;

    @Activate
    public AsOf() {}

    @Override
    public Answer run(Call call) throws Exception {
        if (command.get(0).equals("asof")) {
            throw new CallRefused("asof looks back once; give one date");
        }
        call.folder();
        return ((OneCall) call).runAsOf(command, Optional.of(day));
    }
}
