package pippinry.lineage.internal.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pippinry.lineage.internal.Programs;
import pippinry.lineage.internal.kin.Kin;
import pippinry.model.Program;

class LayersTest {

    private final LaidOut laidOut = laidOut("G,,", "H,,", "M,G,H", "F,,", "C,M,F", "D,M,self", "S,,,sport_of=F");

    private static LaidOut laidOut(String... rows) {
        Program program = Programs.of(rows);
        return Layers.of(Charting.of(
                Kin.of(program), new Wish(Optional.empty(), 0, 0, Set.of()), new Certain(program, Optional.empty())));
    }

    @Test
    void parentsLieToTheLeftOfTheirChildren() {
        assertEquals(7, laidOut.ways().size());
        for (Way way : laidOut.ways()) {
            Place parent = laidOut.places().get(way.link().parent());
            Place child = laidOut.places().get(way.link().child());
            assertTrue(parent.x() + parent.width() < child.x(), way.link().toString());
        }
    }

    @Test
    void everyLineBeginsAtItsParentAndEndsAtItsChild() {
        for (Way way : laidOut.ways()) {
            double[] first = way.points().get(0);
            double[] last = way.points().get(way.points().size() - 1);
            assertTrue(laidOut.places().get(way.link().parent()).contains(first[0], first[1]));
            assertTrue(laidOut.places().get(way.link().child()).contains(last[0], last[1]));
        }
    }

    @Test
    void noTwoCardsLieOnEachOther() {
        List<Place> places = List.copyOf(laidOut.places().values());
        for (Place one : places) {
            for (Place other : places) {
                if (one != other) {
                    assertFalse(other.contains(one.middleX(), one.middleY()));
                }
            }
        }
    }

    @Test
    void theSameChartGetsTheSamePlaces() {
        assertEquals(
                laidOut.places(),
                laidOut("G,,", "H,,", "M,G,H", "F,,", "C,M,F", "D,M,self", "S,,,sport_of=F")
                        .places());
    }

    @Test
    void arrowKeysGoToWhatLiesThere() {
        Card mother = laidOut.chart().cardOf("M").orElseThrow();
        String left = laidOut.next(mother, -1, 0).orElseThrow().number();
        assertTrue(Set.of("G", "H").contains(left), left);
        String right = laidOut.next(mother, 1, 0).orElseThrow().number();
        assertTrue(Set.of("C", "D").contains(right), right);
        Card grandmother = laidOut.chart().cardOf("G").orElseThrow();
        assertTrue(laidOut.next(grandmother, -1, 0).isEmpty());
    }

    @Test
    void anEmptyChartHasNoPlaces() {
        assertTrue(Layers.of(Chart.empty()).places().isEmpty());
    }
}
