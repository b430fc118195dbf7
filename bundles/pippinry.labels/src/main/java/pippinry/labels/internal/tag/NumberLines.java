package pippinry.labels.internal.tag;

import java.util.ArrayList;
import java.util.List;
import pippinry.labels.internal.paper.Box;
import pippinry.labels.internal.paper.Metrics;
import pippinry.labels.internal.paper.TextRun;
import pippinry.libs.fonts.Face;

/**
 * A number broken after its hyphens or slash into lines as even as can be, with the check in smaller letters at the end of
 * the last. Sizes are in multiples of the letter size.
 */
public final class NumberLines {
    private static final double CHECK_SIZE = 0.62;
    private static final double BETWEEN = 0.22;
    /** How far a slash hangs below the baseline. */
    private static final double HANG = 0.1;

    private final List<String> lines;
    private final String ending;
    private final double width;

    private NumberLines(List<String> lines, String ending, Metrics metrics) {
        this.lines = lines;
        this.ending = ending;
        this.width = widest(metrics);
    }

    /** At most so many lines. */
    public static NumberLines of(Tag tag, int most, Metrics metrics) {
        return new NumberLines(broken(pieces(tag.number()), most), tag.ending(), metrics);
    }

    private static List<String> pieces(String number) {
        return List.of(number.split("(?<=[-/ ])"));
    }

    /** Tries every width and takes the least that needs no more lines than allowed. */
    private static List<String> broken(List<String> pieces, int most) {
        int width = 0;
        List<String> lines;
        do {
            lines = wrapped(pieces, ++width);
        } while (lines.size() > most);
        return lines;
    }

    private static List<String> wrapped(List<String> pieces, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String piece : pieces) {
            if (line.length() > 0 && line.length() + piece.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(piece);
        }
        lines.add(line.toString());
        return lines;
    }

    private double widest(Metrics metrics) {
        double widest = 0;
        for (String line : lines) {
            widest = Math.max(widest, metrics.width(Face.NUMBER, line));
        }
        return Math.max(widest, metrics.width(Face.NUMBER, last()) + endingWidth(metrics));
    }

    private double endingWidth(Metrics metrics) {
        return CHECK_SIZE * metrics.width(Face.NUMBER, ending);
    }

    private String last() {
        return lines.get(lines.size() - 1);
    }

    /** From the top of the first line's capitals to the lowest stroke of the last. */
    double height() {
        return lines.size() * Metrics.CAP_HEIGHT + (lines.size() - 1) * BETWEEN + HANG;
    }

    /** The largest letter size in mm with which the lines fit. */
    public double largestSize(double roomWidth, double roomHeight) {
        return Math.min(roomWidth / width, roomHeight / height());
    }

    /** The lines from the top left corner of the room down. */
    public List<TextRun> runs(Box room, double size, Metrics metrics) {
        List<TextRun> runs = new ArrayList<>();
        double baseline = room.y() + Metrics.CAP_HEIGHT * size;
        for (String line : lines) {
            runs.add(new TextRun(Face.NUMBER, size, line, room.x(), baseline));
            baseline += (Metrics.CAP_HEIGHT + BETWEEN) * size;
        }
        addEnding(runs, size, metrics);
        return runs;
    }

    private void addEnding(List<TextRun> runs, double size, Metrics metrics) {
        if (!ending.isEmpty()) {
            TextRun last = runs.get(runs.size() - 1);
            double x = last.x() + size * metrics.width(Face.NUMBER, last.text());
            runs.add(new TextRun(Face.NUMBER, size * CHECK_SIZE, ending, x, last.baseline()));
        }
    }
}
