package pippinry.libs.fonts;

import java.io.IOException;
import java.io.InputStream;

/**
 * A face of the DejaVu typeface as a TrueType file. All cover Latin, Greek and Cyrillic with their marks, and the signs
 * × ♀ ♂ ⊗ of a pedigree.
 */
public enum Face {
    /** For numbers that a hand copies: all digits equally wide, a zero that is no letter O. */
    NUMBER("DejaVuSansMono-Bold.ttf"),
    /** For running text in little room. */
    PLAIN("DejaVuSansCondensed.ttf"),
    /** For headings in little room. */
    STRONG("DejaVuSansCondensed-Bold.ttf");

    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

    private final String file;

    Face(String file) {
        this.file = file;
    }

    /** The TrueType file; the caller closes it. */
    public InputStream open() throws IOException {
        InputStream font = Face.class.getResourceAsStream(FOLDER + file);
        if (font == null) {
            throw new IOException("The font " + file + " is missing from the bundle pippinry.libs.fonts");
        }
        return font;
    }
}
