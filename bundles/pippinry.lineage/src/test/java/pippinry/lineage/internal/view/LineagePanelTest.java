package pippinry.lineage.internal.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pippinry.lineage.internal.Programs;
import pippinry.panels.Painting;
import pippinry.panels.Palette;

/** The panel as a person uses it, painted without a window. */
class LineagePanelTest {

    private final FakeContext context = new FakeContext(Programs.of(rows()));

    private static List<String> rows() {
        List<String> rows = new ArrayList<>(List.of("M,,", "F,,", "P,,,name=Pippin", "Q,P,op"));
        rows.addAll(Programs.seedlings("21-013", "M", "F", 24));
        return rows;
    }

    @Test
    void withoutASelectionAllFamiliesAreShown() {
        assertEquals("all families", panel().subtitle());
    }

    @Test
    void theChartStandsAroundTheSelection() {
        context.select("Q");
        assertEquals("around Q", panel().subtitle());
    }

    @Test
    void aNumberThatIsShownIsMarkedWhereItIs() {
        context.select("M");
        LineagePanel panel = panel();
        int drawn = context.worked("Drawing the lineage");
        panel.mark("21-013-011");
        assertEquals("around M", panel.subtitle(), "it stands behind the card of its family");
        assertEquals(drawn, context.worked("Drawing the lineage"), "nothing is drawn anew");
    }

    @Test
    void aNumberThatIsNotShownComesIntoTheMiddle() {
        context.select("M");
        LineagePanel panel = panel();
        panel.mark("P");
        assertEquals("around P", panel.subtitle());
    }

    @Test
    void aNumberThatIsNoTreesChangesNothing() {
        context.select("M");
        LineagePanel panel = panel();
        panel.mark("L25-001");
        assertEquals("around M", panel.subtitle());
    }

    @Test
    void thePaintedPanelHasTheAccentsLines() {
        context.select("M");
        BufferedImage image = Painting.of(panel().view(), 900, 600, 1);
        Color accent = Palette.light().accent();
        long lines = IntStream.range(0, 900 * 600)
                .filter(i -> image.getRGB(i % 900, i / 900) == accent.getRGB())
                .count();
        assertTrue(lines > 100, lines + " dots of lines");
    }

    private LineagePanel panel() {
        return new LineagePanel(context, Optional.empty(), Optional.empty());
    }
}
