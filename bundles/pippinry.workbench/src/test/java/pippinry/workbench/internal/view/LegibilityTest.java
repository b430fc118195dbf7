package pippinry.workbench.internal.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;

class LegibilityTest {

    @Test
    void wordsWithRoomHaveNoFault() {
        assertEquals(List.of(), faults(new JLabel("Make cross"), 400, 20));
    }

    @Test
    void wordsThatAreCutOffAreNamed() {
        List<String> faults = faults(new JLabel("Look as of this day"), 10, 20);
        assertTrue(faults.get(0).startsWith("'Look as of this day' is cut off: 10 of "), faults.toString());
    }

    @Test
    void aPartWithoutSizeIsNamed() {
        List<String> faults = faults(new JButton("Done"), 0, 0);
        assertEquals(List.of("JButton 'Done' has no size"), faults);
    }

    @Test
    void aPlaceForWordsThatHasNoneYetIsNoFault() {
        JTextArea empty = new JTextArea();
        empty.setEditable(false);
        assertEquals(List.of(), faults(empty, 0, 0));
    }

    @Test
    void aKeyInPlaceOfWordsIsNamed() {
        assertEquals(List.of("'crosses.make' is a key, not words"), faults(new JLabel("crosses.make"), 400, 20));
    }

    @Test
    void whatIsHiddenIsNotLookedAt() {
        JLabel label = new JLabel("Make cross");
        label.setVisible(false);
        assertEquals(List.of(), faults(label, 0, 0));
    }

    private static List<String> faults(Component part, int width, int height) {
        JPanel panel = new JPanel(null);
        panel.add(part);
        panel.setSize(500, 100);
        part.setSize(width, height);
        return Legibility.faults(panel);
    }
}
