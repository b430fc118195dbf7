package pippinry.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Breaks text into lines at its blanks. */
final class Wrapping {

    private Wrapping() {}

    /**
     * @param measure the width of some words
     * @param room a word that is wider stands alone and is not broken
     */
    static List<String> of(String text, ToIntFunction<String> measure, int room) {
        List<String> lines = new ArrayList<>();
        text.lines().forEach(paragraph -> wrap(paragraph, measure, room, lines));
        return lines;
    }

    private static void wrap(String paragraph, ToIntFunction<String> measure, int room, List<String> lines) {
        if (measure.applyAsInt(paragraph) <= room) {
            lines.add(paragraph);
            return;
        }
        String line = "";
        for (String word : paragraph.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (line.isEmpty() || measure.applyAsInt(longer) <= room) {
                line = longer;
            } else {
                lines.add(line);
                line = word;
            }
        }
        lines.add(line);
    }
}
