package pippinry.season.internal.book;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import pippinry.libs.fonts.Face;

/** The letters of the book as Java2D draws them: the same on every machine, whatever fonts it has. */
final class PaperFaces {

    static final String FAMILY = "DejaVu Sans Condensed";

    private static final PaperFaces READ = new PaperFaces();

    private final Font plain = read(Face.PLAIN);
    private final Font strong = read(Face.STRONG);

    private PaperFaces() {}

    static Font plain(double size) {
        return READ.plain.deriveFont((float) size);
    }

    static Font strong(double size) {
        return READ.strong.deriveFont((float) size);
    }

    private static Font read(Face face) {
        try (InputStream file = face.open()) {
            return Font.createFont(Font.TRUETYPE_FONT, file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(e);
        }
    }
}
