package pippinry.panels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Dimension;
import javax.swing.Box;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.table.DefaultTableModel;
import org.junit.jupiter.api.Test;

/** Pieces of panels, laid out without a window. */
class FormTest {

    @Test
    void sentencesAreHigherWhereThereIsLessWidth() {
        Sentences sentences = Form.sentences("many words that need room in one line ".repeat(4), Color.BLACK);
        sentences.setSize(2_000, 20);
        int oneLine = sentences.getPreferredSize().height;
        sentences.setSize(200, 20);
        assertTrue(sentences.getPreferredSize().height >= 4 * oneLine);
    }

    @Test
    void sentencesOfAPaintedPanelHaveTheirWholeHeight() {
        Sentences sentences = Form.sentences("many words that need room in one line ".repeat(4), Color.BLACK);
        JPanel column = Form.column(sentences, Form.label("below"));
        Painting.of(column, 200, 600, 1);
        assertEquals(sentences.getPreferredSize().height, sentences.getHeight());
        assertTrue(column.getComponent(2).getY() >= sentences.getY() + sentences.getHeight());
    }

    @Test
    void aRowGoesOnBelowWhenItsWidthIsUsedUp() {
        JPanel row = Form.row(box(100, 20), box(100, 20), box(100, 20));
        row.setSize(250, 100);
        row.doLayout();
        assertEquals(row.getComponent(0).getY(), row.getComponent(1).getY());
        assertTrue(row.getComponent(2).getY() >= 20);
        assertEquals(0, row.getComponent(2).getX());
        assertEquals(46, row.getPreferredSize().height);
    }

    @Test
    void whatIsWiderThanTheRowIsMadeToFit() {
        JPanel row = Form.row(box(300, 20));
        row.setSize(250, 100);
        row.doLayout();
        assertEquals(250, row.getComponent(0).getWidth());
    }

    @Test
    void thingsOfARowStandInItsMiddle() {
        JPanel row = Form.row(box(10, 40), box(10, 20));
        row.setSize(250, 40);
        row.doLayout();
        assertEquals(10, row.getComponent(1).getY());
    }

    @Test
    void aTableFillsItsRoomAndKeepsItsColumnsInTheirOrder() {
        var table = Form.table(new DefaultTableModel(new Object[][] {{"a", 1}}, new Object[] {"what", "number"}));
        assertTrue(table.getFillsViewportHeight());
        assertEquals(false, table.getTableHeader().getReorderingAllowed());
    }

    private static JComponent box(int width, int height) {
        Dimension size = new Dimension(width, height);
        return new Box.Filler(size, size, size);
    }
}
