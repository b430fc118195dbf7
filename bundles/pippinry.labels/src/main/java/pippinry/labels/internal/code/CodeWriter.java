package pippinry.labels.internal.code;

import java.util.List;
import uk.org.okapibarcode.backend.Code128;
import uk.org.okapibarcode.backend.DataMatrix;
import uk.org.okapibarcode.backend.HumanReadableLocation;
import uk.org.okapibarcode.backend.OkapiInputException;
import uk.org.okapibarcode.backend.QrCode;
import uk.org.okapibarcode.backend.Symbol;
import uk.org.okapibarcode.graphics.Rectangle;

/**
 * Turns an id into a QR code (ISO/IEC 18004, level M or better where the size stays the same), a square Data Matrix
 * (ISO/IEC 16022, ECC 200) or a Code 128 (ISO/IEC 15417), each the smallest that holds it.
 */
public final class CodeWriter {
    /** The code of a text of printable ASCII; {@link IllegalArgumentException} for any other text. */
    public CodePicture write(Symbology symbology, String text) {
        requirePrintable(text);
        return picture(symbology, text, encode(symbol(symbology), text));
    }

    private static void requirePrintable(String text) {
        if (text.isEmpty() || !text.chars().allMatch(c -> c >= ' ' && c <= '~')) {
            throw new IllegalArgumentException(
                    "A code holds letters A-Z, digits and plain signs only, but this is '" + text + "'");
        }
    }

    static Symbol symbol(Symbology symbology) {
        return switch (symbology) {
            case QR -> qr();
            case DATA_MATRIX -> dataMatrix();
            case CODE_128 -> new Code128();
        };
    }

    private static Symbol qr() {
        QrCode code = new QrCode();
        code.setPreferredEccLevel(QrCode.EccLevel.M);
        return code;
    }

    private static Symbol dataMatrix() {
        DataMatrix code = new DataMatrix();
        code.setForceMode(DataMatrix.ForceMode.SQUARE);
        return code;
    }

    private static Symbol encode(Symbol symbol, String text) {
        symbol.setHumanReadableLocation(HumanReadableLocation.NONE);
        symbol.setBarHeight(1);
        try {
            symbol.setContent(text);
        } catch (OkapiInputException e) {
            throw new IllegalArgumentException("'" + text + "' cannot be written as a code: " + e.getMessage(), e);
        }
        return symbol;
    }

    private static CodePicture picture(Symbology symbology, String text, Symbol symbol) {
        List<Bar> bars = symbol.getRectangles().stream().map(CodeWriter::bar).toList();
        return new CodePicture(symbology, text, symbol.getWidth(), symbol.getHeight(), bars);
    }

    private static Bar bar(Rectangle dark) {
        return new Bar(whole(dark.x), whole(dark.y), whole(dark.width), whole(dark.height));
    }

    private static int whole(double modules) {
        return Math.toIntExact(Math.round(modules));
    }
}
