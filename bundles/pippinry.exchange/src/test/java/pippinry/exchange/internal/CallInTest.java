package pippinry.exchange.internal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import picocli.CommandLine;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.model.Program;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;

/** A call of a subcommand by a test, with programs in memory. */
public final class CallInTest implements Call {

    public static final Instant NOW = Instant.parse("2026-03-27T10:00:00Z");

    private final ProgramFolders folders;
    private final Path program;

    public CallInTest(ProgramFolders folders) {
        this(folders, null);
    }

    /** @param program named by {@code --program}; null if none is */
    public CallInTest(ProgramFolders folders, Path program) {
        this.folders = folders;
        this.program = program;
    }

    /** Reads the arguments as the command line would, and runs the command. */
    public Answer run(Subcommand command, Object... arguments) throws Exception {
        String[] words = java.util.Arrays.stream(arguments).map(String::valueOf).toArray(String[]::new);
        new CommandLine(command).parseArgs(words);
        return command.run(this);
    }

    @Override
    public Program program() throws CallRefused {
        return store().now();
    }

    @Override
    public ProgramStore store() throws CallRefused {
        return folders.open(folder(), clock());
    }

    @Override
    public Path folder() throws CallRefused {
        if (program == null) {
            throw new CallRefused("no --program");
        }
        return program;
    }

    @Override
    public ProgramFolders folders() {
        return folders;
    }

    @Override
    public LocalDate today() {
        return LocalDate.of(2026, 3, 27);
    }

    @Override
    public Clock clock() {
        return Clock.fixed(NOW, ZoneOffset.UTC);
    }

    @Override
    public String author() {
        return "IN";
    }

    @Override
    public Path image() {
        return Path.of(".");
    }

    @Override
    public InputStream in() {
        return new ByteArrayInputStream(new byte[0]);
    }

    @Override
    public PrintStream out() {
        return new PrintStream(new ByteArrayOutputStream(), false, StandardCharsets.UTF_8);
    }

    @Override
    public void progress(String what, double done) {}

    @Override
    public Answer run(List<String> arguments) {
        throw new UnsupportedOperationException();
    }
}
