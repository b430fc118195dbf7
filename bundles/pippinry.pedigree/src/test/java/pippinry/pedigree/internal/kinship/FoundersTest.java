package pippinry.pedigree.internal.kinship;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import org.junit.jupiter.api.Test;

class FoundersTest {
    /** Computed in R from published parentages of apple cultivars; exact fractions. */
    @Test
    void founderSharesOfApplesAreTheComputedOnes() {
        NamedPedigree pedigree = NamedPedigree.read("cultivars.csv");
        for (NamedCsvRecord row : NamedPedigree.table("cultivars-expected.csv")) {
            if (!row.getField("quantity").startsWith("founder")) continue;
            Founders founders = Founders.of(pedigree.kinship().graph(), pedigree.numbers(row.getField("a")));
            assertEquals(
                    Double.parseDouble(row.getField("value")), share(pedigree, founders, row.getField("b")), 1e-14);
        }
    }

    private static double share(NamedPedigree pedigree, Founders founders, String name) {
        boolean unknown = name.startsWith("unknown parent of ");
        String who = unknown ? name.replaceAll("unknown parent of | \\(2\\)", "") : name;
        Founders.Who which = unknown ? Founders.Who.UNKNOWN_POLLEN_PARENT : Founders.Who.ITSELF;
        return founders.shares().stream()
                .filter(share -> share.individual() == pedigree.number(who) && share.who() == which)
                .mapToDouble(Founders.Share::part)
                .sum();
    }

    /** Status number of Lindgren, Gea and Jefferson (1996) Silvae Genetica 45:52-59: four clones 4, four full sibs 1.6. */
    @Test
    void fourFullSibsAreWorthLessThanTwoFounders() {
        NamedPedigree pedigree = NamedPedigree.of("C: A B", "D: A B", "E: A B", "F: A B", "X: G H");
        assertEquals(4, Founders.genomeEquivalents(pedigree.kinship(), pedigree.numbers("A", "B", "G", "H")), 1e-14);
        int[] sibs = pedigree.numbers("C", "D", "E", "F");
        assertEquals(1.6, Founders.genomeEquivalents(pedigree.kinship(), sibs), 1e-14);
        assertEquals(2, Founders.of(pedigree.kinship().graph(), sibs).effectiveNumber(), 1e-14);
    }

    @Test
    void aBottleneckShowsInTheAncestorsButNotInTheFounders() {
        NamedPedigree pedigree = NamedPedigree.of("P: A B", "Q: C D", "X: P Q", "Y: P Q", "Z: P Q");
        int[] group = pedigree.numbers("X", "Y", "Z");
        assertEquals(4, Founders.of(pedigree.kinship().graph(), group).effectiveNumber(), 1e-14);
        MajorAncestors ancestors = MajorAncestors.of(pedigree.kinship().graph(), group, 100);
        assertEquals(2, ancestors.effectiveNumber(), 1e-14);
        assertEquals(0, ancestors.unexplained());
        assertEquals(pedigree.number("P"), ancestors.parts().get(0).individual());
    }

    @Test
    void anAncestorAddsOnlyWhatThoseBeforeItLeft() {
        NamedPedigree pedigree = NamedPedigree.of("P: A B", "Q: P C", "X: P D", "Y: Q E", "Z: P F");
        MajorAncestors ancestors = MajorAncestors.of(pedigree.kinship().graph(), pedigree.numbers("X", "Y", "Z"), 100);
        assertEquals(pedigree.number("P"), ancestors.parts().get(0).individual());
        assertEquals((0.5 + 0.25 + 0.5) / 3, ancestors.parts().get(0).part(), 1e-14);
        double sum = ancestors.parts().stream()
                .mapToDouble(MajorAncestors.Part::part)
                .sum();
        assertEquals(1, sum, 1e-12);
    }

    @Test
    void fewerRoundsBoundTheEffectiveNumber() {
        NamedPedigree pedigree = NamedPedigree.read("bench-1000.csv");
        int[] all = pedigree.names().stream().mapToInt(pedigree::number).toArray();
        MajorAncestors few = MajorAncestors.of(pedigree.kinship().graph(), all, 10);
        MajorAncestors whole = MajorAncestors.of(pedigree.kinship().graph(), all, 1000);
        assertEquals(0, whole.unexplained());
        org.junit.jupiter.api.Assertions.assertTrue(few.effectiveNumberAtLeast() < whole.effectiveNumber());
        org.junit.jupiter.api.Assertions.assertTrue(few.effectiveNumber() > whole.effectiveNumber());
        assertEquals(whole.effectiveNumber(), whole.effectiveNumberAtLeast());
    }

    @Test
    void anUnknownGrandparentHalvesItsSideAtThatDepth() {
        NamedPedigree pedigree = NamedPedigree.of("P: A unknown", "Q: C D", "X: P Q", "Y: P op", "Z: P Q|C");
        Completeness two = Completeness.of(pedigree.kinship().graph(), 2);
        assertEquals(2 * 0.75 * 1 / 1.75, two.index(pedigree.number("X")), 1e-15);
        assertEquals(0, two.index(pedigree.number("Y")));
        assertEquals(2 * 0.75 * 0.75 / 1.5, two.index(pedigree.number("Z")), 1e-15);
        assertEquals(0, two.index(pedigree.number("A")));
        assertEquals(1 + 0.75, two.equivalentGenerations(pedigree.number("X")), 1e-15);
        assertEquals(0.5 + 0.25, two.equivalentGenerations(pedigree.number("Y")), 1e-15);
        assertThrows(
                IllegalArgumentException.class,
                () -> Completeness.of(pedigree.kinship().graph(), 0));
    }
}
