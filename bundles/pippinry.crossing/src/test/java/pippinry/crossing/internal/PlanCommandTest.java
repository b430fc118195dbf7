package pippinry.crossing.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.mockito.ArgumentCaptor;
import picocli.CommandLine;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.record.Cross;
import pippinry.model.record.Kinds;

class PlanCommandTest {

    private static final Program PROGRAM = new TestProgram()
            .csv(
                    "genotypes",
                    """
                    code,name,crop,kind,ploidy
                    FIE,Fiesta,apple,cultivar,2
                    GOR,GoldRush,apple,cultivar,2
                    CAR,,apple,selection,2
                    SUS,,apple,cultivar,2
                    """)
            .csv(
                    "alleles",
                    """
                    genotype,locus,alleles,series
                    GOR,S,S1/S9,numbers
                    CAR,S,S2/S9,numbers
                    SUS,S,S1/S2,numbers
                    FIE,Rvi6,rvi6/rvi6,
                    SUS,Rvi6,rvi6/rvi6,
                    CAR,Rvi6,Rvi6/rvi6,
                    """)
            .csv("goals", "trait,kind,direction,threshold\nscab_leaf,must,less,2")
            .build();

    @Test
    void theGroundGoesToTheCrossWithMostWantedSeedlings() throws Exception {
        Answer answer = run(call(), "--places", "60", "--flowers", "500", "--one-parent", "1");
        List<?> crosses = (List<?>) answer.json().get("crosses");
        Map<?, ?> first = (Map<?, ?>) crosses.get(0);
        assertEquals(
                List.of("CAR", "GOR"),
                List.of(
                                first.get("seed_parent").toString(),
                                first.get("pollen_parent").toString())
                        .stream()
                        .sorted()
                        .toList());
        assertEquals(0.75, (double) first.get("share"), 0.005);
        assertTrue((int) answer.json().get("seedlings") <= 60);
        assertTrue((int) answer.json().get("flowers") <= 500);
        assertTrue((double) answer.json().get("worth") <= (double) answer.json().get("bound") + 1e-9);
    }

    @Test
    void madeCrossesStandOnFileWithNumbersAndTags() throws Exception {
        Call call = call();
        ProgramStore store = mock(ProgramStore.class);
        when(call.store()).thenReturn(store);
        Answer answer = run(call, "--places", "60", "--flowers", "500", "--make");
        ArgumentCaptor<Edit> edit = ArgumentCaptor.forClass(Edit.class);
        verify(store).apply(edit.capture());
        Program after = PROGRAM.apply(edit.getValue(), Instant.EPOCH).program();
        List<Cross> made = after.table(Kinds.CROSSES).stream().toList();
        assertEquals(((List<?>) answer.json().get("made")).size(), made.size());
        assertEquals("26-001", made.get(0).code().text());
        assertTrue(made.get(0).seedlingsWanted().orElseThrow() >= 20);
        assertTrue(after.table(Kinds.POLLINATIONS).size() >= made.size());
    }

    @Test
    void withoutGroundOrHopeItSaysSo() throws Exception {
        assertFalse(run(call(), "--places", "0").yes());
        Answer hopeless = run(call(), "--places", "60", "--flowers", "3");
        assertFalse(hopeless.yes());
        assertTrue(hopeless.words().contains("--flowers"));
        assertTrue(
                assertThrows(CallRefused.class, () -> run(call())).getMessage().startsWith("--places"));
        assertThrows(CallRefused.class, () -> run(call(), "--places", "60", "--inbreeding", "2"));
    }

    private static Call call() throws Exception {
        Call call = mock(Call.class);
        when(call.program()).thenReturn(PROGRAM);
        when(call.today()).thenReturn(LocalDate.of(2026, 3, 27));
        when(call.author()).thenReturn("IN");
        return call;
    }

    private static Answer run(Call call, String... arguments) throws Exception {
        PlanCommand command = new PlanCommand(List.of(TestPack.pack()), null, null);
        new CommandLine(command).parseArgs(arguments);
        return command.run(call);
    }
}
