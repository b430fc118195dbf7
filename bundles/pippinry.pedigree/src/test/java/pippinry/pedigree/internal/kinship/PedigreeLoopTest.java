package pippinry.pedigree.internal.kinship;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PedigreeLoopTest {
    @ParameterizedTest
    @CsvSource({"X: X B, X", "S: sport S, S", "A: C B;C: D A;D: C E, C D"})
    void whoIsTheirOwnAncestorIsNamed(String rows, String members) {
        NamedPedigree pedigree = NamedPedigree.of(rows.split(";"));
        PedigreeLoop loop = assertThrows(PedigreeLoop.class, pedigree::kinship);
        int[] expected = pedigree.numbers(members.split(" "));
        int[] named = loop.members();
        Arrays.sort(expected);
        Arrays.sort(named);
        assertArrayEquals(expected, named);
    }

    @Test
    void aLoopIsToldFromChildToParent() {
        NamedPedigree pedigree = NamedPedigree.of("A: B x", "B: y C|z", "C: sport A");
        int[] members = assertThrows(PedigreeLoop.class, pedigree::kinship).members();
        assertArrayEquals(pedigree.numbers("A", "B", "C"), members);
    }

    @Test
    void aLongLineOfDescentNeedsNoDeepStack() {
        PedigreeDraft draft = new PedigreeDraft();
        for (int i = 0; i < 200_000; i++) draft.add();
        for (int i = 0; i < 199_999; i++) draft.seedParent(i, i + 1);
        PedigreeGraph graph = draft.build();
        assertEquals(199_999, graph.node(0));
        assertEquals(0, graph.node(199_999));
    }
}
