package pippinry.labels.internal.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import pippinry.libs.fonts.Face;

/**
 * The faces, their widths, and what they lack: a sign that a face does not have is drawn as an empty box and remembered, so
 * that the person can be told. Of one thread; a face is read when it is first used.
 */
public final class Lettering implements Metrics {
    private static final int EMPTY_BOX = 0x25A1;

    private final Map<Face, TrueTypeFont> fonts = new EnumMap<>(Face.class);
    /** A layout asks for the same widths hundreds of times. */
    private final Map<Face, Map<String, Double>> widths = new EnumMap<>(Face.class);

    private final Set<String> missing = new LinkedHashSet<>();

    @Override
    public double width(Face face, String text) {
        return widths.computeIfAbsent(face, any -> new HashMap<>())
                .computeIfAbsent(text, unknown -> measured(face, unknown));
    }

    private double measured(Face face, String text) {
        TrueTypeFont font = font(face);
        double units = drawable(face, text)
                .codePoints()
                .mapToDouble(sign -> advance(font, sign))
                .sum();
        return units / unitsPerEm(font);
    }

    /** The text as it can be drawn: marks joined to their letters, line ends as spaces, lacking signs as empty boxes. */
    public String drawable(Face face, String text) {
        CmapLookup signs = signs(face);
        return Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .map(sign -> Character.isISOControl(sign) ? ' ' : sign)
                .map(sign -> present(signs, sign))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private int present(CmapLookup signs, int sign) {
        if (signs.getGlyphId(sign) != 0) {
            return sign;
        }
        missing.add(Character.toString(sign));
        return EMPTY_BOX;
    }

    /** Signs met so far that had to be drawn as an empty box. */
    public Set<String> missing() {
        return Set.copyOf(missing);
    }

    /** The face as PDFBox embeds it. */
    TrueTypeFont font(Face face) {
        return fonts.computeIfAbsent(face, Lettering::read);
    }

    private static TrueTypeFont read(Face face) {
        try (InputStream file = face.open()) {
            return new TTFParser().parse(new RandomAccessReadBuffer(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private CmapLookup signs(Face face) {
        try {
            return font(face).getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double advance(TrueTypeFont font, int sign) {
        try {
            return font.getAdvanceWidth(font.getUnicodeCmapLookup().getGlyphId(sign));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int unitsPerEm(TrueTypeFont font) {
        try {
            return font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
