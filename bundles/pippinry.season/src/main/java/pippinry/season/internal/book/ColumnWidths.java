package pippinry.season.internal.book;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Shares the width of the page among the columns of a table: what every longest word needs first, then what is left in
 * proportion to what the cells would like to have. Columns that need no more stay as they are.
 */
final class ColumnWidths {

    private ColumnWidths() {}

    /** Without the room between columns. */
    static double[] of(Block.Grid grid, double width, Measure heads, Measure cells) {
        int columns = grid.headers().size();
        double[] least = new double[columns];
        double[] wanted = new double[columns];
        for (int column = 0; column < columns; column++) {
            least[column] = widest(grid, column, true, heads, cells);
            wanted[column] = widest(grid, column, false, heads, cells);
        }
        double sum = Arrays.stream(wanted).sum();
        if (sum <= width) {
            return wanted;
        }
        return share(least, wanted, width);
    }

    private static double[] share(double[] least, double[] wanted, double width) {
        double needed = Arrays.stream(least).sum();
        if (needed >= width) {
            double shrink = width / needed;
            return Arrays.stream(least).map(some -> some * shrink).toArray();
        }
        double left = width - needed;
        double more = IntStream.range(0, least.length)
                .mapToDouble(column -> wanted[column] - least[column])
                .sum();
        return IntStream.range(0, least.length)
                .mapToDouble(column -> least[column] + left * (wanted[column] - least[column]) / more)
                .toArray();
    }

    private static double widest(Block.Grid grid, int column, boolean words, Measure heads, Measure cells) {
        double head = widest(grid.headers().get(column), words, heads);
        List<String> texts = grid.rows().stream().map(row -> row.get(column)).toList();
        return Math.max(
                head,
                texts.stream()
                        .mapToDouble(text -> widest(text, words, cells))
                        .max()
                        .orElse(0));
    }

    private static double widest(String text, boolean words, Measure measure) {
        Stream<String> parts = words ? Stream.of(text.split("\\s+")) : text.lines();
        return parts.mapToDouble(measure::width).max().orElse(0);
    }
}
