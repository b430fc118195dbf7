package pippinry.panels;

import java.awt.Dimension;
import java.awt.Graphics2D;

/** Shows a picture on the screen, as large as it is given room. */
public final class PictureView extends Drawn {

    private static final long serialVersionUID = 1;

    private transient Picture picture;

    /** @param preferred the size at which the picture reads best */
    public PictureView(Picture picture, Dimension preferred, String description) {
        this.picture = picture;
        setPreferredSize(preferred);
        tell(description);
    }

    public void show(Picture next, String description) {
        picture = next;
        tell(description);
        repaint();
    }

    @Override
    protected void draw(Graphics2D graphics) {
        picture.paint(graphics, getWidth(), getHeight());
    }
}
