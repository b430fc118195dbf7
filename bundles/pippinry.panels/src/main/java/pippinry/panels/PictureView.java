package pippinry.panels;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** Shows a picture on the screen, as large as it is given room. */
public final class PictureView extends JComponent {

    private static final long serialVersionUID = 1;

    private transient Picture picture;

    /** @param preferred the size at which the picture reads best */
    public PictureView(Picture picture, Dimension preferred, String description) {
        this.picture = picture;
        setPreferredSize(preferred);
        getAccessibleContext().setAccessibleDescription(description);
    }

    public void show(Picture next, String description) {
        picture = next;
        getAccessibleContext().setAccessibleDescription(description);
        repaint();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.ICON;
                }
            };
        }
        return accessibleContext;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        own.setFont(getFont());
        picture.paint(own, getWidth(), getHeight());
        own.dispose();
    }
}
