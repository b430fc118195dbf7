package pippinry.panels;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.UIManager;

/** A component that is drawn smoothly and tells in words what it shows, for who cannot see it. */
public abstract class Drawn extends JComponent {

    private static final long serialVersionUID = 1;

    protected Drawn() {
        setFont(UIManager.getFont("Label.font"));
    }

    /** Draws into the component's own size, with its font. */
    protected abstract void draw(Graphics2D graphics);

    /** Puts what is shown into words. */
    protected final void tell(String description) {
        getAccessibleContext().setAccessibleDescription(description);
    }

    @Override
    protected final void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        own.setFont(getFont());
        draw(own);
        own.dispose();
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
}
