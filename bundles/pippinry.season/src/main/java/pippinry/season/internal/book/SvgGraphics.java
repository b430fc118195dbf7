package pippinry.season.internal.book;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Map;

/**
 * Writes what is drawn as SVG. Shapes become paths in the picture's own coordinates; text stays text, so that it can be
 * found, read aloud and set right to left, and carries its measured width, so that it fits whatever fonts the reader has.
 *
 * <p>It knows plain colours and alpha, shapes, strokes, clips and text. What else Java2D can do (images, gradients, drawing
 * modes) is refused by {@link PlainGraphics}, and the picture is then put in as pixels.
 */
final class SvgGraphics extends PlainGraphics {

    private final SvgElements elements;
    private AffineTransform transform = new AffineTransform();
    private Color color = Color.BLACK;
    private Color background = Color.WHITE;
    private Stroke stroke = new BasicStroke();
    private Font font = PaperFaces.plain(9);
    private double alpha = 1;
    /** In the picture's coordinates; null is everything. */
    private Area clip;

    SvgGraphics(SvgElements elements) {
        this.elements = elements;
    }

    @Override
    public Graphics2D create() {
        SvgGraphics other = new SvgGraphics(elements);
        other.transform = new AffineTransform(transform);
        other.color = color;
        other.background = background;
        other.stroke = stroke;
        other.font = font;
        other.alpha = alpha;
        other.clip = clip;
        return other;
    }

    @Override
    public void fill(Shape shape) {
        elements.fill(transform.createTransformedShape(shape), color, alpha, clip);
    }

    @Override
    public void draw(Shape shape) {
        double scale = Math.sqrt(Math.abs(transform.getDeterminant()));
        if (stroke instanceof BasicStroke plain && isUniform()) {
            elements.draw(transform.createTransformedShape(shape), plain, scale, color, alpha, clip);
        } else {
            fill(stroke.createStrokedShape(shape));
        }
    }

    private boolean isUniform() {
        int uniform = AffineTransform.TYPE_TRANSLATION
                | AffineTransform.TYPE_UNIFORM_SCALE
                | AffineTransform.TYPE_FLIP
                | AffineTransform.TYPE_MASK_ROTATION;
        return (transform.getType() & ~uniform) == 0;
    }

    @Override
    public void drawString(String text, float x, float y) {
        if (!text.isBlank()) {
            double width = font.getStringBounds(text, getFontRenderContext()).getWidth();
            AffineTransform there = new AffineTransform(transform);
            there.translate(x, y);
            there.concatenate(font.getTransform());
            elements.text(text, font, width, there, color, alpha, clip);
        }
    }

    @Override
    public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
        fill(glyphs.getOutline(x, y));
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return new FontRenderContext(null, true, true);
    }

    @Override
    public FontMetrics getFontMetrics(Font some) {
        Graphics2D measuring = new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB).createGraphics();
        measuring.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        measuring.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        FontMetrics metrics = measuring.getFontMetrics(some);
        measuring.dispose();
        return metrics;
    }

    @Override
    public void clip(Shape shape) {
        if (shape == null) {
            clip = null;
            return;
        }
        Area there = new Area(transform.createTransformedShape(shape));
        if (clip != null) {
            there.intersect(clip);
        }
        clip = there;
    }

    @Override
    public void setClip(Shape shape) {
        clip = shape == null ? null : new Area(transform.createTransformedShape(shape));
    }

    @Override
    public Shape getClip() {
        if (clip == null) {
            return null;
        }
        return inverse().createTransformedShape(clip);
    }

    private AffineTransform inverse() {
        try {
            return transform.createInverse();
        } catch (java.awt.geom.NoninvertibleTransformException e) {
            return new AffineTransform();
        }
    }

    @Override
    public Rectangle getClipBounds() {
        Shape there = getClip();
        return there == null ? null : there.getBounds();
    }

    @Override
    public boolean hit(Rectangle rectangle, Shape shape, boolean onStroke) {
        Shape there = onStroke ? stroke.createStrokedShape(shape) : shape;
        return transform.createTransformedShape(there).intersects((Rectangle2D) rectangle);
    }

    @Override
    public void setPaint(Paint paint) {
        if (paint instanceof Color plain) {
            color = plain;
        } else if (paint != null) {
            throw refused("a paint that is no plain colour");
        }
    }

    @Override
    public Paint getPaint() {
        return color;
    }

    @Override
    public Color getColor() {
        return color;
    }

    @Override
    public void setComposite(Composite composite) {
        if (composite instanceof AlphaComposite over && over.getRule() == AlphaComposite.SRC_OVER) {
            alpha = over.getAlpha();
        } else {
            throw refused("a drawing mode");
        }
    }

    @Override
    public Composite getComposite() {
        return AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) alpha);
    }

    @Override
    public void setBackground(Color color) {
        background = color;
    }

    @Override
    public Color getBackground() {
        return background;
    }

    @Override
    public void setStroke(Stroke stroke) {
        this.stroke = stroke;
    }

    @Override
    public Stroke getStroke() {
        return stroke;
    }

    @Override
    public void setFont(Font font) {
        if (font != null) {
            this.font = font;
        }
    }

    @Override
    public Font getFont() {
        return font;
    }

    @Override
    public void transform(AffineTransform more) {
        transform.concatenate(more);
    }

    @Override
    public void setTransform(AffineTransform transform) {
        this.transform = new AffineTransform(transform);
    }

    @Override
    public AffineTransform getTransform() {
        return new AffineTransform(transform);
    }

    // Hints change how pixels are made; there are none.

    @Override
    public void setRenderingHint(RenderingHints.Key key, Object value) {}

    @Override
    public Object getRenderingHint(RenderingHints.Key key) {
        return null;
    }

    @Override
    public void setRenderingHints(Map<?, ?> hints) {}

    @Override
    public void addRenderingHints(Map<?, ?> hints) {}

    @Override
    public RenderingHints getRenderingHints() {
        return new RenderingHints(null);
    }

    @Override
    public void dispose() {}
}
