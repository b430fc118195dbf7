package pippinry.labels.internal.paper;

import pippinry.libs.fonts.Face;

/** How wide a text is. Capitals and digits of our faces are 0.729 of the letter size high. */
@FunctionalInterface
public interface Metrics {
    /** Height of a capital as a share of the letter size: 1493 of 2048 units in all faces of DejaVu. */
    double CAP_HEIGHT = 1493.0 / 2048;

    /** How far marks rise above the baseline, as a share of the letter size. */
    double ASCENT = 0.93;

    /** How far letters hang below the baseline, as a share of the letter size. */
    double DESCENT = 0.24;

    /** From line to line, as a share of the letter size. */
    double LINE = 1.18;

    /** Width as a multiple of the letter size. */
    double width(Face face, String text);
}
