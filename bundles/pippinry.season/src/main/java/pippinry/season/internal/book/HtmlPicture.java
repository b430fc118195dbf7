package pippinry.season.internal.book;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import javax.imageio.ImageIO;

/** A figure inside the HTML page: as lines and text where it can be, as pixels at twice the size where it cannot. */
final class HtmlPicture {

    private static final int SCALE = 2;

    private HtmlPicture() {}

    /** @param number of the picture on the page */
    static String of(Block.Figure figure, int number) {
        int width = Setting.TEXT_WIDTH;
        int height = (int) Math.round(width * figure.aspect());
        try {
            SvgElements elements = new SvgElements("p" + number);
            figure.picture().paint(new SvgGraphics(elements), width, height);
            return elements.svg(width, height, figure.caption());
        } catch (UnsupportedOperationException e) {
            return "<img alt=\"" + Escaped.of(figure.caption()) + "\" src=\"data:image/png;base64,"
                    + pixels(figure, width, height) + "\">";
        }
    }

    private static String pixels(Block.Figure figure, int width, int height) {
        BufferedImage image = new BufferedImage(width * SCALE, height * SCALE, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(SCALE, SCALE);
        graphics.setColor(Color.BLACK);
        graphics.setFont(PaperFaces.plain(9));
        figure.picture().paint(graphics, width, height);
        graphics.dispose();
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", bytes);
            return Base64.getEncoder().encodeToString(bytes.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
