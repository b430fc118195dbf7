package pippinry.lineage.internal.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Dimension;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.api.Test;

class LensTest {

    private static final Dimension VIEW = new Dimension(400, 300);

    @Test
    void aFittingChartIsSeenWholeAndInTheMiddle() {
        Lens lens = Lens.fitting(1000, 200, VIEW);
        assertTrue(lens.toChart(0, 0).getX() <= 0 && lens.toChart(400, 0).getX() >= 1000);
        assertEquals(100, lens.toChart(200, 150).getY(), 1e-9);
        assertEquals(500, lens.toChart(200, 150).getX(), 1e-9);
    }

    @Test
    void aSmallChartIsNotBlownUp() {
        assertEquals(1, Lens.fitting(100, 50, VIEW).zoom());
    }

    @Test
    void whatLiesUnderTheMouseStaysThereWhenZoomed() {
        Lens lens = new Lens(1.3, 40, -20);
        Point2D before = lens.toChart(123, 45);
        Point2D after = lens.zoomed(1.2, 123, 45).toChart(123, 45);
        assertEquals(before.getX(), after.getX(), 1e-9);
        assertEquals(before.getY(), after.getY(), 1e-9);
    }

    @Test
    void zoomingHasAnEnd() {
        Lens lens = Lens.plain();
        for (int i = 0; i < 100; i++) {
            lens = lens.zoomed(0.5, 10, 10);
        }
        assertTrue(lens.zoom() > 0.01);
    }

    @Test
    void revealingMovesNoFartherThanNeeded() {
        Lens lens = new Lens(2, 0, 0);
        assertEquals(lens, lens.revealing(new Rectangle2D.Double(50, 50, 20, 20), VIEW));
        Lens moved = lens.revealing(new Rectangle2D.Double(300, 50, 20, 20), VIEW);
        assertEquals(320 + 8, moved.toChart(400, 0).getX(), 1e-9);
        assertEquals(0, moved.y(), 1e-9);
    }
}
