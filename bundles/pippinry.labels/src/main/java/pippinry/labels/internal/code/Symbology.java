package pippinry.labels.internal.code;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A way of drawing an id so that a camera reads it, with the white that must stay around it. Quiet zones: ISO/IEC 18004
 * (four modules on all sides, read at qrcode.com), ISO/IEC 16022 (one module, read at docs.cognex.com), ISO/IEC 15417 (ten
 * modules left and right, from memory).
 */
public enum Symbology {
    QR("qr", "QR code", 4, 4),
    DATA_MATRIX("datamatrix", "Data Matrix", 1, 1),
    CODE_128("code128", "Code 128", 10, 0);

    private final String word;
    private final String title;
    private final int quietBeside;
    private final int quietAbove;

    Symbology(String word, String title, int quietBeside, int quietAbove) {
        this.word = word;
        this.title = title;
        this.quietBeside = quietBeside;
        this.quietAbove = quietAbove;
    }

    /** The word a person types. */
    public String word() {
        return word;
    }

    /** The name in a sentence. */
    public String title() {
        return title;
    }

    /** White modules to the left and to the right. */
    public int quietBeside() {
        return quietBeside;
    }

    /** White modules above and below. */
    public int quietAbove() {
        return quietAbove;
    }

    /** Bars side by side, whose height may be chosen. */
    public boolean isLinear() {
        return this == CODE_128;
    }

    @Override
    public String toString() {
        return title;
    }

    /** Empty when the word is none of ours. */
    public static Optional<Symbology> of(String word) {
        return Arrays.stream(values())
                .filter(symbology -> symbology.word.equalsIgnoreCase(word))
                .findFirst();
    }

    /** The words a person may type, for a message. */
    public static String words() {
        return Arrays.stream(values()).map(Symbology::word).collect(Collectors.joining(", "));
    }
}
