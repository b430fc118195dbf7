package pippinry.pedigree.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mockito.Mockito;
import picocli.CommandLine;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Kinds;

class ParentsCommandTest {
    private final Call call = Mockito.mock(Call.class);

    @BeforeEach
    void aProgramWithReadings() throws CallRefused {
        Program program = Programs.of("X,A,B,crop=apple", "Y,A,B|C", "Z,Y,B", "14-006-001,A,op");
        Edit.Draft draft = Edit.by("IN", "readings");
        for (String row : List.of("A=S3/S7", "B=S1/S3", "C=S3/S5", "X=S3/S7", "Y=S1/S7", "14-006-001=S5/S7")) {
            String[] cells = row.split("=");
            draft.put(
                    Kinds.ALLELES,
                    Programs.row(Kinds.ALLELES, Map.of("genotype", cells[0], "locus", "S", "alleles", cells[1])));
        }
        Mockito.when(call.program()).thenReturn(Programs.apply(program, draft));
    }

    private Answer parents(String... arguments) throws CallRefused {
        ParentsCommand command = new ParentsCommand(List.of(new SmallPack()));
        new CommandLine(command).parseArgs(arguments);
        return command.run(call);
    }

    private static List<?> list(Answer answer, String key) {
        return (List<?>) answer.json().get(key);
    }

    private static Object first(Answer answer, String key, String part) {
        return ((Map<?, ?>) list(answer, key).get(0)).get(part);
    }

    @Test
    void withoutANumberAllThatIsWrongOrOpenIsListed() throws Exception {
        Answer answer = parents();
        assertTrue(answer.yes());
        assertEquals(1, list(answer, "impossible").size());
        assertEquals("X", first(answer, "impossible", "genotype"));
        assertEquals(List.of("S-alleles"), first(answer, "impossible", "against"));
        assertEquals("Y", first(answer, "candidates", "genotype"));
        assertTrue(answer.words().endsWith("1 impossible, 1 with several candidates\n"), answer.words());
    }

    @Test
    void anImpossibleParentageAnswersNo() throws Exception {
        Answer answer = parents("X");
        assertFalse(answer.yes());
        assertTrue(answer.words().contains("pollen of B, impossible if all readings are right"), answer.words());
    }

    @Test
    void candidatesComeLikeliestFirst() throws Exception {
        Answer answer = parents("Y");
        assertTrue(answer.yes());
        assertEquals("B", first(answer, "pollen_parents", "parent"));
        assertEquals(
                Arrays.asList(
                        "genotype",
                        "possible",
                        "against",
                        "markers",
                        "seed_parent",
                        "pollen_parents",
                        "doubts",
                        "notes"),
                List.copyOf(answer.json().keySet()));
    }

    @Test
    void othersMayBeAskedAbout() throws Exception {
        Answer answer = parents("14-006-001", "--among", "B,C");
        assertEquals("C", first(answer, "pollen_parents", "parent"));
        CallRefused refused = assertThrows(CallRefused.class, () -> parents("X", "--among", "B,Q"));
        assertTrue(refused.getMessage().startsWith("--among: 'Q'; expected different genotypes on file"));
        assertThrows(CallRefused.class, () -> parents("--among", "B,C"));
    }

    @Test
    void aStrangerIsAnsweredWithTheNearestNumbers() throws Exception {
        Answer answer = parents("14-006-002");
        assertFalse(answer.yes());
        assertEquals(Map.of("nearest", List.of("14-006-001")), answer.json());
    }

    @Test
    void doubtOfAParentIsInherited() throws Exception {
        Answer answer = parents("Z");
        assertTrue(list(answer, "doubts").toString().contains("The pollen parent of Y is one of B, C"));
    }
}
