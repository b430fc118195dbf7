package pippinry.lineage.internal.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pippinry.lineage.internal.Programs;
import pippinry.lineage.internal.kin.Doubt;
import pippinry.lineage.internal.kin.Kin;
import pippinry.model.Program;
import pippinry.model.ask.Descent;
import pippinry.model.ask.ParentChance;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

class ChartingTest {

    private static final Wish WISH = new Wish(Optional.of("M"), 2, 2, Set.of());

    /** Grandparents G and H, their child M, a family of 24 by M and F, of which one is a parent of K. */
    private final Program program = Programs.of(rows());

    private static List<String> rows() {
        List<String> rows = new ArrayList<>(List.of("G,,", "H,,", "F,,", "M,G,H,name=Mother"));
        rows.addAll(Programs.seedlings("21-013", "M", "F", 24));
        rows.add("K,21-013-005,F");
        return rows;
    }

    @Test
    void aFamilyOfManyStandsBehindOneCardButForItsParents() {
        Chart chart = chart(WISH);
        Card family = family(chart);
        assertEquals("and 23 seedlings more", family.title());
        assertEquals("of 21-013", family.subtitle());
        assertEquals("21-013", family.number());
        assertEquals(23, family.members());
        assertTrue(chart.cardOf("21-013-005").isPresent());
        assertTrue(chart.cardOf("K").isPresent(), "a grandchild");
    }

    @Test
    void anOpenedFamilyShowsItsChildrenOneByOne() {
        Chart opened = chart(WISH.turning(family(chart(WISH)).family()));
        assertTrue(opened.cardOf("21-013-023").isPresent());
        assertTrue(opened.cards().stream().noneMatch(Card::isFamily));
        assertEquals(chart(WISH), chart(WISH.turning("x").turning("x")), "turned twice it is closed again");
    }

    @Test
    void onlySoManyGenerationsAreShown() {
        Chart near = chart(WISH.withUp(0).withDown(1));
        assertTrue(near.cardOf("G").isEmpty());
        assertTrue(near.cardOf("K").isEmpty());
        assertEquals("24 seedlings", family(near).title());
        assertTrue(near.cardOf("F").isPresent(), "the other parent of a family");
    }

    @Test
    void theSistersOfTheOneInTheMiddleStandBehindACard() {
        Chart chart = chart(WISH.around(Optional.of("21-013-007")));
        assertTrue(chart.cardOf("21-013-007").isPresent());
        assertEquals("and 23 seedlings more", family(chart).title());
        assertEquals(Set.of("G", "H", "M", "F"), parentsShown(chart));
    }

    @Test
    void everyLineJoinsTwoCardsThatAreThere() {
        Chart chart = chart(WISH.around(Optional.empty()));
        assertTrue(chart.links().size() >= 6);
        chart.links().forEach(link -> {
            assertTrue(chart.card(link.parent()).isPresent(), link.toString());
            assertTrue(chart.card(link.child()).isPresent(), link.toString());
        });
    }

    @Test
    void whatWasReadWeighsTheLines() {
        Program several = Programs.of("A,,", "B,,", "C,,", "21-001-001,A,B|C");
        Chart chart = Charting.of(
                Kin.of(several),
                new Wish(Optional.of("21-001-001"), 1, 0, Set.of()),
                new Certain(several, Optional.of(new Weighed())));
        List<Link> pollen =
                chart.links().stream().filter(link -> !link.badge().isEmpty()).toList();
        assertEquals("? 80 %", pollen.get(0).badge());
        assertEquals(Doubt.IMPOSSIBLE, pollen.get(1).bond().doubt());
        assertEquals("×", pollen.get(1).badge());
        assertEquals(List.of("doubt"), chart.cardOf("21-001-001").orElseThrow().doubts());
    }

    @Test
    void aProgramOfTenThousandIsStillAChart() {
        List<String> rows = new ArrayList<>(List.of("A,,", "B,,"));
        String seed = "A";
        for (int year = 0; year < 100; year++) {
            List<String> family = Programs.seedlings("%02d-001".formatted(year), seed, "B", 100);
            rows.addAll(family);
            seed = family.get(0).split(",")[0];
        }
        Program large = Programs.of(rows);
        Chart chart = Charting.of(
                Kin.of(large), new Wish(Optional.empty(), 0, 0, Set.of()), new Certain(large, Optional.empty()));
        assertTrue(chart.cards().size() < 300, chart.cards().size() + " cards");
        assertTrue(chart.cards().stream().mapToInt(Card::members).sum() > 9_000);
        assertEquals(0, chart.leftOut());
    }

    private Chart chart(Wish wish) {
        return Charting.of(Kin.of(program), wish, new Certain(program, Optional.empty()));
    }

    private static Card family(Chart chart) {
        return chart.cards().stream().filter(Card::isFamily).findFirst().orElseThrow();
    }

    private static Set<String> parentsShown(Chart chart) {
        return Set.copyOf(chart.links().stream()
                .map(link -> chart.card(link.parent()).orElseThrow().number())
                .distinct()
                .toList());
    }

    /** Says of two candidates that the first has 80 in a hundred and the other cannot be. */
    private static final class Weighed implements Descent {

        @Override
        public List<String> doubts(Program program, Code<Genotype> genotype) {
            return genotype.text().startsWith("21") ? List.of("doubt") : List.of();
        }

        @Override
        public List<ParentChance> pollenParents(Program program, Code<Genotype> genotype) {
            return List.of(
                    new ParentChance(Optional.of(Code.of("B")), 0.8, true),
                    new ParentChance(Optional.of(Code.of("C")), 0, false),
                    new ParentChance(Optional.empty(), 0.2, true));
        }
    }
}
