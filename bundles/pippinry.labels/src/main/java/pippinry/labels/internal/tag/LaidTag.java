package pippinry.labels.internal.tag;

import java.util.List;
import java.util.Optional;
import pippinry.labels.internal.paper.TextRun;

/**
 * A tag with everything in its place.
 *
 * @param capHeight height in mm of the number's capitals
 * @param smallSize letter size in mm of the small text, 0 when there is none
 * @param leftOff small lines for which there was no room, whole or in part
 */
record LaidTag(
        Tag tag,
        List<TextRun> runs,
        Optional<CodeSpot> code,
        double capHeight,
        double smallSize,
        List<String> leftOff) {
    /** Distance in metres from which the number can be read. */
    double readableFrom() {
        return capHeight * TagStyle.DISTANCE_PER_CAP_HEIGHT / 1000;
    }

    /** The share of the small lines that found room. */
    double kept() {
        int lines = tag.lines().size();
        return lines == 0 ? 1 : 1 - (double) leftOff.size() / lines;
    }
}
