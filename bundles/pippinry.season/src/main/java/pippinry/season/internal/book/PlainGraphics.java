package pippinry.season.internal.book;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Polygon;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;

/** Brings the many calls of Java2D down to a few: fill, draw, string, clip, transform. Pixels are refused. */
abstract class PlainGraphics extends Graphics2D {

    static UnsupportedOperationException refused(String what) {
        return new UnsupportedOperationException("This picture uses " + what + ", which cannot be written as lines");
    }

    @Override
    public void setColor(Color color) {
        if (color != null) {
            setPaint(color);
        }
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        draw(new Line2D.Double(x1, y1, x2, y2));
    }

    @Override
    public void drawRect(int x, int y, int width, int height) {
        draw(new Rectangle(x, y, width, height));
    }

    @Override
    public void fillRect(int x, int y, int width, int height) {
        fill(new Rectangle(x, y, width, height));
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {
        Color before = getColor();
        setColor(getBackground());
        fillRect(x, y, width, height);
        setColor(before);
    }

    @Override
    public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        draw(new RoundRectangle2D.Double(x, y, width, height, arcWidth, arcHeight));
    }

    @Override
    public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        fill(new RoundRectangle2D.Double(x, y, width, height, arcWidth, arcHeight));
    }

    @Override
    public void drawOval(int x, int y, int width, int height) {
        draw(new Ellipse2D.Double(x, y, width, height));
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        fill(new Ellipse2D.Double(x, y, width, height));
    }

    @Override
    public void drawArc(int x, int y, int width, int height, int start, int extent) {
        draw(new Arc2D.Double(x, y, width, height, start, extent, Arc2D.OPEN));
    }

    @Override
    public void fillArc(int x, int y, int width, int height, int start, int extent) {
        fill(new Arc2D.Double(x, y, width, height, start, extent, Arc2D.PIE));
    }

    @Override
    public void drawPolyline(int[] xs, int[] ys, int points) {
        if (points > 1) {
            Path2D path = new Path2D.Double();
            path.moveTo(xs[0], ys[0]);
            for (int i = 1; i < points; i++) {
                path.lineTo(xs[i], ys[i]);
            }
            draw(path);
        }
    }

    @Override
    public void drawPolygon(int[] xs, int[] ys, int points) {
        draw(new Polygon(xs, ys, points));
    }

    @Override
    public void fillPolygon(int[] xs, int[] ys, int points) {
        fill(new Polygon(xs, ys, points));
    }

    @Override
    public void drawString(String text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        fill(new TextLayout(text, getFontRenderContext()).getOutline(AffineTransform.getTranslateInstance(x, y)));
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {
        clip(new Rectangle(x, y, width, height));
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        setClip((Shape) new Rectangle(x, y, width, height));
    }

    @Override
    public void translate(int x, int y) {
        translate((double) x, (double) y);
    }

    @Override
    public void translate(double x, double y) {
        transform(AffineTransform.getTranslateInstance(x, y));
    }

    @Override
    public void rotate(double angle) {
        transform(AffineTransform.getRotateInstance(angle));
    }

    @Override
    public void rotate(double angle, double x, double y) {
        transform(AffineTransform.getRotateInstance(angle, x, y));
    }

    @Override
    public void scale(double x, double y) {
        transform(AffineTransform.getScaleInstance(x, y));
    }

    @Override
    public void shear(double x, double y) {
        transform(AffineTransform.getShearInstance(x, y));
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB)
                .createGraphics()
                .getDeviceConfiguration();
    }

    @Override
    public void setPaintMode() {}

    @Override
    public void setXORMode(Color other) {
        throw refused("a drawing mode");
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw refused("a copy of pixels");
    }

    @Override
    public boolean drawImage(Image image, AffineTransform where, ImageObserver observer) {
        throw refused("an image");
    }

    @Override
    public void drawImage(BufferedImage image, BufferedImageOp operation, int x, int y) {
        throw refused("an image");
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform where) {
        throw refused("an image");
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform where) {
        throw refused("an image");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw refused("an image");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw refused("an image");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, Color ground, ImageObserver observer) {
        throw refused("an image");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, Color ground, ImageObserver observer) {
        throw refused("an image");
    }

    @Override
    public boolean drawImage(
            Image image,
            int dx1,
            int dy1,
            int dx2,
            int dy2,
            int sx1,
            int sy1,
            int sx2,
            int sy2,
            ImageObserver observer) {
        throw refused("an image");
    }

    @Override
    public boolean drawImage(
            Image image,
            int dx1,
            int dy1,
            int dx2,
            int dy2,
            int sx1,
            int sy1,
            int sx2,
            int sy2,
            Color ground,
            ImageObserver observer) {
        throw refused("an image");
    }
}
