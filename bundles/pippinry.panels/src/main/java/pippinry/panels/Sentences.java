package pippinry.panels;

import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Toolkit;
import java.util.List;
import java.util.Map;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/**
 * Words that wrap at whatever width there is, and are as high as they need to be there. Lighter than a text area: a
 * season's list has hundreds of them.
 */
public final class Sentences extends JComponent {

    private static final long serialVersionUID = 1;
    private static final int UNPLACED_WIDTH = 320;
    private static final int LEAST_WIDTH = 80;

    private String text;
    private transient Lines lines = new Lines(List.of(), -1);

    private record Lines(List<String> lines, int width) {}

    Sentences(String text, Color colour) {
        this.text = text;
        setForeground(colour);
        setFont(UIManager.getFont("Label.font"));
        setAlignmentX(Component.LEFT_ALIGNMENT);
    }

    public String getText() {
        return text;
    }

    public void setText(String next) {
        text = next;
        forget();
    }

    @Override
    public void setFont(Font font) {
        super.setFont(font);
        forget();
    }

    private void forget() {
        lines = new Lines(List.of(), -1);
        revalidate();
        repaint();
    }

    /** A new width wants another height: the parts below move in the next round of layout. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean anew = width != getWidth();
        super.setBounds(x, y, width, height);
        if (anew && height != heightAt(width)) {
            invalidate();
            SwingUtilities.invokeLater(this::revalidate);
        }
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : UNPLACED_WIDTH;
        return new Dimension(Math.max(LEAST_WIDTH, Math.min(width, widest())), heightAt(width));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(LEAST_WIDTH, getPreferredSize().height);
    }

    @Override
    public Dimension getMaximumSize() {
        return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
    }

    private int widest() {
        FontMetrics metrics = metrics();
        return text.lines().mapToInt(metrics::stringWidth).max().orElse(0) + 1;
    }

    private int heightAt(int width) {
        return Math.max(1, wrapped(width).size()) * metrics().getHeight();
    }

    private List<String> wrapped(int width) {
        if (lines.width() != width) {
            lines = new Lines(Wrapping.of(text, metrics()::stringWidth, width), width);
        }
        return lines.lines();
    }

    private FontMetrics metrics() {
        return getFontMetrics(getFont());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        smooth(own);
        own.setColor(getForeground());
        own.setFont(getFont());
        FontMetrics metrics = metrics();
        int baseline = metrics.getAscent();
        for (String line : wrapped(getWidth())) {
            own.drawString(line, 0, baseline);
            baseline += metrics.getHeight();
        }
        own.dispose();
    }

    /** Letters as the rest of the screen draws them. */
    private static void smooth(Graphics2D graphics) {
        Object hints = Toolkit.getDefaultToolkit().getDesktopProperty("awt.font.desktophints");
        if (hints instanceof Map<?, ?> known) {
            graphics.addRenderingHints(known);
        } else {
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.LABEL;
                }

                @Override
                public String getAccessibleName() {
                    return text;
                }
            };
        }
        return accessibleContext;
    }
}
