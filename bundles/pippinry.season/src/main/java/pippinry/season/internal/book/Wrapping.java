package pippinry.season.internal.book;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines at spaces, and inside a word only where one word alone is too wide. */
final class Wrapping {

    private Wrapping() {}

    /** At least one line; line feeds of the text are kept. */
    static List<String> lines(String text, double width, Measure measure) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\\R", -1)) {
            wrap(paragraph.strip(), width, measure, lines);
        }
        return lines;
    }

    private static void wrap(String paragraph, double width, Measure measure, List<String> lines) {
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (measure.width(longer) <= width) {
                line.setLength(0);
                line.append(longer);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(breakWord(word, width, measure, lines));
        }
        lines.add(line.toString());
    }

    /** Adds full lines of a word that is too wide. @return what is left of it */
    private static String breakWord(String word, double width, Measure measure, List<String> lines) {
        String left = word;
        while (measure.width(left) > width) {
            int end = fitting(left, width, measure);
            if (end == left.length()) {
                break;
            }
            lines.add(left.substring(0, end));
            left = left.substring(end);
        }
        return left;
    }

    /** How many of the first characters fit, at least one whole sign. */
    private static int fitting(String word, double width, Measure measure) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            if (measure.width(word.substring(0, next)) > width) {
                break;
            }
            end = next;
        }
        return end;
    }
}
