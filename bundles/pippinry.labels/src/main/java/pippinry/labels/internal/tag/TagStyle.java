package pippinry.labels.internal.tag;

import java.util.Optional;
import pippinry.labels.internal.code.Symbology;
import pippinry.labels.internal.paper.Dots;

/**
 * How tags are to look.
 *
 * @param symbology the code beside the text; empty for text alone
 * @param dots the printer's grid
 * @param readFrom distance in metres from which the number is to be read
 */
public record TagStyle(Optional<Symbology> symbology, Dots dots, double readFrom) {
    /** Capitals are as high as the reading distance divided by this (from memory: 3.5 mm at arm's length). */
    static final double DISTANCE_PER_CAP_HEIGHT = 200;

    /** The least module a hand-held camera reads well off weathered plastic (common practice, no source), in mm. */
    static final double LEAST_MODULE = 0.25;

    /** Modules of tags outdoors (common practice, no source), in mm. */
    static final double GOOD_MODULE = 0.5;

    /** The upper end of that range, in mm. */
    static final double AMPLE_MODULE = 0.8;

    /** Beyond this a code only takes room from the text (our own judgement), in mm. */
    static final double LARGEST_MODULE = 1.6;

    /** A hand-held reader wants bars at least so high, and 15 % of the code's width (from memory), in mm. */
    static final double LEAST_BAR = 5;

    static final double BAR_SHARE = 0.15;

    public TagStyle {
        if (!(readFrom >= 0.2 && readFrom <= 10)) {
            throw new IllegalArgumentException("A tag is read from 0.2 to 10 m away, not from " + readFrom);
        }
    }

    /** A QR code, an office printer, arm's length. */
    public static TagStyle usual() {
        return new TagStyle(Optional.of(Symbology.QR), new Dots(300), 0.7);
    }

    /** Height of a capital in mm that the reading distance asks for. */
    public double wantedCapHeight() {
        return readFrom * 1000 / DISTANCE_PER_CAP_HEIGHT;
    }
}
