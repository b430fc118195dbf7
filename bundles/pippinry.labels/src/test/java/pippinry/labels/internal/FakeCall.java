package pippinry.labels.internal;

import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.Subcommand;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ProgramStore;

/** Runs a subcommand as the command line does, on a program that is kept in memory. */
final class FakeCall {
    private final Call call = mock(Call.class);
    private Program program;

    FakeCall(Program start) throws Exception {
        this.program = start;
        ProgramStore store = mock(ProgramStore.class);
        when(store.now()).thenAnswer(asked -> program);
        when(store.apply(any())).thenAnswer(asked -> {
            program = program.apply(asked.<Edit>getArgument(0), Instant.EPOCH).program();
            return null;
        });
        when(call.program()).thenAnswer(asked -> program);
        when(call.store()).thenReturn(store);
        when(call.today()).thenReturn(LocalDate.of(2026, 3, 27));
        when(call.author()).thenReturn("IN");
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
