package pippinry.labels.internal.paper;

import java.util.ArrayList;
import java.util.List;
import pippinry.libs.fonts.Face;

/**
 * Lines of text in a box, wrapped at spaces in the largest letters that let them all fit. Where even the smallest do not,
 * the last lines are left off, and a single line is cut with an ellipsis.
 */
public final class FittedText {
    /** Five points; smaller is not read outdoors (from memory). */
    private static final double SMALLEST = 1.8;

    private static final double STEP = 0.1;
    private static final Face FACE = Face.PLAIN;

    private final Metrics metrics;
    private final Box room;
    private final double largest;

    /** @param largest letter size in mm that is not exceeded */
    public FittedText(Metrics metrics, Box room, double largest) {
        this.metrics = metrics;
        this.room = room;
        this.largest = largest;
    }

    /** The runs, their letter size and height in mm, and which lines were left off, whole or in part. */
    public record Fitted(List<TextRun> runs, double size, double height, List<String> leftOff) {
        static final Fitted NOTHING = new Fitted(List.of(), 0, 0, List.of());
    }

    public Fitted fit(List<String> lines) {
        if (lines.isEmpty()) {
            return Fitted.NOTHING;
        }
        for (double size = Math.max(largest, SMALLEST); size >= SMALLEST; size -= STEP) {
            List<String> wrapped = wrapped(lines, size);
            if (fits(wrapped, size)) {
                return set(wrapped, size, List.of());
            }
        }
        return fitFewer(lines);
    }

    private Fitted fitFewer(List<String> lines) {
        for (int kept = lines.size() - 1; kept > 0; kept--) {
            List<String> wrapped = wrapped(lines.subList(0, kept), SMALLEST);
            if (fits(wrapped, SMALLEST)) {
                return set(wrapped, SMALLEST, lines.subList(kept, lines.size()));
            }
        }
        return shortened(lines);
    }

    private Fitted shortened(List<String> lines) {
        String cut = cut(lines.get(0));
        return cut.isEmpty() || height(1, SMALLEST) > room.height()
                ? new Fitted(List.of(), 0, 0, lines)
                : set(List.of(cut), SMALLEST, lines);
    }

    private String cut(String line) {
        for (int end = line.length() - 1; end > 2; end--) {
            String cut = line.substring(0, end).strip() + "…";
            if (!Character.isHighSurrogate(line.charAt(end - 1)) && width(cut, SMALLEST) <= room.width()) {
                return cut;
            }
        }
        return "";
    }

    private List<String> wrapped(List<String> lines, double size) {
        List<String> wrapped = new ArrayList<>();
        for (String line : lines) {
            wrap(line, size, wrapped);
        }
        return wrapped;
    }

    private void wrap(String line, double size, List<String> into) {
        String current = "";
        for (String word : line.split("\\s+")) {
            String longer = current.isEmpty() ? word : current + " " + word;
            if (!current.isEmpty() && width(longer, size) > room.width()) {
                into.add(current);
                longer = word;
            }
            current = longer;
        }
        into.add(current);
    }

    private boolean fits(List<String> wrapped, double size) {
        return height(wrapped.size(), size) <= room.height()
                && wrapped.stream().allMatch(line -> width(line, size) <= room.width());
    }

    private double width(String line, double size) {
        return size * metrics.width(FACE, line);
    }

    private static double height(int lines, double size) {
        return size * (Metrics.ASCENT + Metrics.DESCENT + (lines - 1) * Metrics.LINE);
    }

    private Fitted set(List<String> lines, double size, List<String> leftOff) {
        List<TextRun> runs = new ArrayList<>();
        double baseline = room.y() + size * Metrics.ASCENT;
        for (String line : lines) {
            runs.add(new TextRun(FACE, size, line, room.x(), baseline));
            baseline += size * Metrics.LINE;
        }
        return new Fitted(runs, size, height(lines.size(), size), leftOff);
    }
}
