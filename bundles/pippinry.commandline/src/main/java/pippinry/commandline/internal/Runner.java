package pippinry.commandline.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import pippinry.commandline.Answer;
import pippinry.commandline.CallRefused;
import pippinry.model.EditRefused;
import pippinry.model.ProgramFolders;
import pippinry.model.StoreFailed;

/** Finds the subcommand that is called, runs it, prints what it answers and says how it ended. */
final class Runner {

    /** The work is done, or the answer is yes. */
    static final int DONE = 0;
    /** The answer is no. */
    static final int NO = 1;
    /** The call or its input is wrong. */
    static final int WRONG = 2;
    /** The program could not be opened or written. */
    static final int FAILED = 3;

    private static final int WIDTH = 100;

    /** @param json whether it is wanted as JSON */
    record Reply(Answer answer, boolean json) {}

    private final Commands commands;
    private final ProgramFolders folders;
    private final Surroundings around;

    Runner(Commands commands, ProgramFolders folders, Surroundings around) {
        this.commands = commands;
        this.folders = folders;
        this.around = around;
    }

    Surroundings around() {
        return around;
    }

    ProgramFolders folders() {
        return folders;
    }

    /** @return the exit code */
    int run(List<String> arguments) {
        if (arguments.isEmpty() || List.of("--help", "-h", "help").contains(arguments.get(0))) {
            around.out().print(Overview.of(commands.summaries()));
            return DONE;
        }
        try {
            OpenProgram none = new OpenProgram(Optional.empty(), Optional.empty(), folders, around.clock());
            return print(answer(arguments, none, Optional.empty()));
        } catch (CallRefused | ParameterException e) {
            return say(e.getMessage(), WRONG);
        } catch (EditRefused e) {
            return say("Nothing was changed:\n" + e.getMessage(), WRONG);
        } catch (StoreFailed e) {
            return say(e.getMessage(), FAILED);
        } catch (Exception e) {
            return unexpected(e);
        }
    }

    /** @param around the program that the call around this one works on */
    Reply answer(List<String> arguments, OpenProgram around, Optional<LocalDate> asOf) throws Exception {
        String name = arguments.get(0);
        Commands.Lease lease = commands.open(name).orElseThrow(() -> unknown(name));
        try (lease) {
            CommonOptions options = lease.reckons() ? new CommonOptions() : new CommonOptions.OfProgram();
            CommandLine line = line(lease, name, options);
            line.parseArgs(arguments.subList(1, arguments.size()).toArray(String[]::new));
            if (options.help) {
                return new Reply(Answer.of(java.util.Map.of(), line.getUsageMessage(Ansi.OFF)), false);
            }
            OpenProgram program = around.within(options.program(), asOf);
            try (OneCall call = new OneCall(this, options, program, asOf)) {
                Answer answer = lease.command().run(call);
                return new Reply(answer, options.json);
            }
        }
    }

    private static CommandLine line(Commands.Lease lease, String name, CommonOptions options) {
        CommandLine line = new CommandLine(lease.command());
        line.addMixin("common", options);
        line.setCommandName("pippinry " + name);
        line.setUsageHelpWidth(WIDTH);
        line.setStopAtPositional(lease.command() instanceof AsOf);
        return line;
    }

    private CallRefused unknown(String name) {
        return new CallRefused("There is no command '" + name + "'. "
                + Overview.nearest(commands.summaries().keySet(), name)
                        .map(near -> "Is '" + near + "' meant? ")
                        .orElse("")
                + "'pippinry --help' lists them.");
    }

    private int print(Reply reply) {
        String text = reply.json()
                ? JsonText.of(reply.answer().json())
                : reply.answer().words();
        if (!text.isEmpty()) {
            around.out().println(text.stripTrailing());
        }
        return reply.answer().yes() ? DONE : NO;
    }

    private int say(String message, int exit) {
        around.err().println("pippinry: " + message);
        return exit;
    }

    private int unexpected(Exception e) {
        say("This should not have happened, and nothing was left half done: " + e, FAILED);
        e.printStackTrace(around.err());
        return FAILED;
    }
}
