package pippinry.pedigree.internal.kinship;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pippinry.pedigree.internal.kinship.LinksBetween.Link;

class LinksTest {
    private static List<String> below(NamedPedigree pedigree, String... names) {
        BitSet doubted = new BitSet();
        Arrays.stream(pedigree.numbers(names)).forEach(doubted::set);
        BitSet below = Descendants.of(pedigree.kinship().graph(), doubted);
        return pedigree.names().stream()
                .filter(name -> below.get(pedigree.number(name)))
                .sorted()
                .collect(Collectors.toList());
    }

    @Test
    void doubtGoesDownBySeedPollenCandidatesAndSports() {
        NamedPedigree pedigree =
                NamedPedigree.of("S: A B", "P: C A", "K: C D|A", "T: sport P", "G: E T", "N: C D", "O: E op", "L: N O");
        assertEquals(List.of("A", "G", "K", "P", "S", "T"), below(pedigree, "A"));
        assertEquals(List.of("L", "N"), below(pedigree, "N"));
    }

    @Test
    void onlyLinksThatLeadToACommonAncestorMakeARelationship() {
        NamedPedigree pedigree = NamedPedigree.of("P: A B", "Q: C A", "X: P D", "Y: E Q");
        List<Link> links = LinksBetween.of(pedigree.kinship().graph(), pedigree.number("X"), pedigree.number("Y"));
        assertEquals(
                List.of("P SEED", "Q POLLEN", "X SEED", "Y POLLEN"),
                links.stream()
                        .map(link -> pedigree.names().get(link.child()) + " " + link.side())
                        .sorted()
                        .toList());
    }
}
