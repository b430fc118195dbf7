package pippinry.labels.internal;

import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import picocli.CommandLine;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.Subcommand;
import pippinry.model.Edit;
import pippinry.model.HistoryLine;
import pippinry.model.Outcome;
import pippinry.model.Program;
import pippinry.model.ProgramStore;

/** Runs a subcommand as the command line does, on a program that is kept in memory. */
final class FakeCall {
    private final Call call = mock(Call.class);
    private final Map<Long, Outcome> edits = new HashMap<>();
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private Program program;

    FakeCall(Program start) throws Exception {
        this.program = start;
        ProgramStore store = mock(ProgramStore.class);
        when(store.now()).thenAnswer(asked -> program);
        when(store.apply(any())).thenAnswer(asked -> {
            Outcome outcome = program.apply(asked.<Edit>getArgument(0), Instant.EPOCH);
            return keep(outcome, asked.<Edit>getArgument(0).reason());
        });
        when(store.takeBack(anyLong(), any()))
                .thenAnswer(asked -> keep(
                        program.takeBack(edits.get(asked.<Long>getArgument(0)).changes(), Instant.EPOCH),
                        "taken back"));
        when(call.program()).thenAnswer(asked -> program);
        when(call.store()).thenReturn(store);
        when(call.today()).thenReturn(LocalDate.of(2026, 3, 27));
        when(call.author()).thenReturn("IN");
    }

    private HistoryLine keep(Outcome outcome, String reason) {
        program = outcome.program();
        edits.put(program.edit(), outcome);
        return new HistoryLine(
                program.edit(), Instant.EPOCH, "IN", reason, 1, OptionalLong.empty(), OptionalLong.empty());
    }

    /** What a person types, a line each. */
    FakeCall typing(String... lines) throws Exception {
        String text = String.join("\n", lines) + "\n";
        when(call.in()).thenReturn(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        said.reset();
        when(call.out()).thenReturn(new PrintStream(said, true, StandardCharsets.UTF_8));
        return this;
    }

    FakeCall in(Path folder) throws Exception {
        when(call.folder()).thenReturn(folder);
        return this;
    }

    String said() {
        return said.toString(StandardCharsets.UTF_8);
    }

    Program program() {
        return program;
    }

    Answer run(Subcommand command, Object... arguments) throws Exception {
        String[] words = Arrays.stream(arguments).map(String::valueOf).toArray(String[]::new);
        new CommandLine(command).parseArgs(words);
        return command.run(call);
    }

    static Optional<Object> of(Answer answer, String key) {
        return Optional.ofNullable(answer.json().get(key));
    }
}
