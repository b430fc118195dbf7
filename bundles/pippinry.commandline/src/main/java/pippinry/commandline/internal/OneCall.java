package pippinry.commandline.internal;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.model.Program;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;

/** One call of a subcommand. */
final class OneCall implements Call, AutoCloseable {

    private static final PrintStream SILENCE =
            new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    private static final int WHOLE = 100;

    private final Runner runner;
    private final CommonOptions options;
    private final Optional<LocalDate> asOf;
    private final OpenProgram program;

    OneCall(Runner runner, CommonOptions options, OpenProgram program, Optional<LocalDate> asOf) {
        this.runner = runner;
        this.options = options;
        this.asOf = asOf;
        this.program = program;
    }

    @Override
    public Program program() throws CallRefused {
        return program.read();
    }

    @Override
    public ProgramStore store() throws CallRefused {
        return program.write();
    }

    @Override
    public Path folder() throws CallRefused {
        return program.folder();
    }

    @Override
    public ProgramFolders folders() {
        return runner.folders();
    }

    @Override
    public LocalDate today() {
        return Optional.ofNullable(options.on())
                .or(() -> asOf)
                .or(this::todayOfProgram)
                .orElseGet(() -> LocalDate.now(clock()));
    }

    private Optional<LocalDate> todayOfProgram() {
        try {
            return program.isNamed() ? program.read().setting("today").map(LocalDate::parse) : Optional.empty();
        } catch (CallRefused e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public Clock clock() {
        return runner.around().clock();
    }

    @Override
    public String author() {
        return Optional.ofNullable(options.author()).orElse(runner.around().user());
    }

    @Override
    public Path image() {
        return runner.around().image();
    }

    @Override
    public InputStream in() {
        return runner.around().in();
    }

    @Override
    public PrintStream out() {
        return options.json ? SILENCE : runner.around().out();
    }

    @Override
    public void progress(String what, double done) {
        if (runner.around().terminal()) {
            String end = done >= 1 ? "\n" : "";
            runner.around().err().printf("\r%s: %d %%%s", what, Math.round(done * WHOLE), end);
        }
    }

    @Override
    public Answer run(List<String> arguments) throws Exception {
        return runAsOf(arguments, asOf);
    }

    /** Runs another subcommand on the program as it stood that day; it takes over {@code --program} and {@code --json}. */
    Answer runAsOf(List<String> arguments, Optional<LocalDate> day) throws Exception {
        Runner.Reply reply = runner.answer(arguments, program, day);
        options.json |= reply.json();
        return reply.answer();
    }

    @Override
    public void close() {
        program.close();
    }
}
