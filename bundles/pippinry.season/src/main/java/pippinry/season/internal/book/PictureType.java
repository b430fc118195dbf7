package pippinry.season.internal.book;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.text.AttributedCharacterIterator;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Text of pictures in the book's own letters stays text; any other, or what needs shaping, is drawn as outlines. */
final class PictureType extends PdfBoxGraphics2DFontTextDrawer {

    private final PaperType plain;
    private final PaperType strong;

    PictureType(PaperType plain, PaperType strong) {
        this.plain = plain;
        this.strong = strong;
    }

    @Override
    public boolean canDrawText(AttributedCharacterIterator text, IFontTextDrawerEnv around) {
        StringBuilder signs = new StringBuilder();
        for (char sign = text.first(); sign != AttributedCharacterIterator.DONE; sign = text.next()) {
            signs.append(sign);
        }
        text.first();
        Font font = (Font) text.getAttribute(java.awt.font.TextAttribute.FONT);
        return isOurs(font == null ? around.getFont() : font)
                && !PaperType.needsLayout(signs.toString())
                && signs.codePoints().allMatch(sign -> plain.has(sign) && strong.has(sign));
    }

    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv around) throws IOException {
        boolean bold = font.isBold() || font.getFontName(Locale.ROOT).contains("Bold");
        return (bold ? strong : plain).font();
    }

    private static boolean isOurs(Font font) {
        return font.getFamily(Locale.ROOT).equals(PaperFaces.FAMILY);
    }
}
