package pippinry.pedigree.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.mockito.Mockito;
import picocli.CommandLine;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.model.Program;

class FoundersCommandTest {
    private static Answer founders(Program program, String... arguments) throws CallRefused {
        Call call = Mockito.mock(Call.class);
        Mockito.when(call.program()).thenReturn(program);
        FoundersCommand command = new FoundersCommand(List.of());
        new CommandLine(command).parseArgs(arguments);
        return command.run(call);
    }

    @Test
    void aProgramRestsOnTheFoundersOfItsYoungest() throws Exception {
        Answer answer = founders(Programs.of("C,A,B", "D,A,E", "X,C,D", "Y,C,"));
        Map<String, ?> json = answer.json();
        assertEquals(2, json.get("group"));
        assertEquals(4, json.get("founders"));
        assertEquals(Map.of("founder", "A", "part", (0.5 + 0.25) / 2), ((List<?>) json.get("shares")).get(0));
        assertEquals(0.125 / 2, (double) json.get("mean_inbreeding"), 1e-15);
        assertTrue(answer.words().contains("unknown pollen parent of Y"), answer.words());
    }

    @Test
    void aGroupMayBeNamed() throws Exception {
        Program program = Programs.of("C,A,B", "D,A,B");
        assertEquals(2.0, (double) founders(program, "--of", "A,B").json().get("genome_equivalents"), 1e-12);
        CallRefused refused = assertThrows(CallRefused.class, () -> founders(program, "--of", "A,Q"));
        assertTrue(refused.getMessage().startsWith("--of: 'Q'"));
    }

    @Test
    void anEmptyProgramSaysWhatToDo() throws Exception {
        assertFalse(founders(Program.empty()).yes());
    }
}
