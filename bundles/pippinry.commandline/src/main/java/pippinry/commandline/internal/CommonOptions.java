package pippinry.commandline.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Option;

/** Options that every command has. */
class CommonOptions {

    @Option(names = "--json", description = "Answer with one JSON object on standard output.")
    boolean json;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Tell how this command is used.")
    boolean help;

    Path program() {
        return null;
    }

    LocalDate on() {
        return null;
    }

    String author() {
        return null;
    }

    /** Those of commands that work on a program. */
    static final class OfProgram extends CommonOptions {

        @Option(names = "--program", paramLabel = "DIR", description = "The program folder.")
        Path program;

        @Option(names = "--on", paramLabel = "DATE", description = "Take this day, as 2026-03-27, for today.")
        LocalDate on;

        @Option(names = "--author", paramLabel = "INITIALS", description = "Whose hand this is, for the history.")
        String author;

        @Override
        Path program() {
            return program;
        }

        @Override
        LocalDate on() {
            return on;
        }

        @Override
        String author() {
            return author;
        }
    }
}
