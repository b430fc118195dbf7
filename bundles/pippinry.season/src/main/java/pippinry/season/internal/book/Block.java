package pippinry.season.internal.book;

import java.util.List;
import pippinry.panels.Picture;

/** A piece of a chapter, before it is known how it is set. */
sealed interface Block {

    record Heading(String text) implements Block {}

    record Paragraph(String text) implements Block {}

    record Caution(String text) implements Block {}

    /** Every row has as many cells as there are headers. */
    record Grid(List<String> headers, List<List<String>> rows) implements Block {

        private static final String NUMBER = "[-+−≥]? ?\\d[\\d  .,]*( ?%)?";

        public Grid {
            headers = List.copyOf(headers);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != headers.size()) {
                    throw new IllegalArgumentException(
                            "A row has " + row.size() + " cells under " + headers.size() + " headers: " + row);
                }
            }
        }

        /** Whether this column holds numbers and nothing else, so that they are set right under each other. */
        boolean isNumeric(int column) {
            return rows.stream().anyMatch(row -> !row.get(column).isEmpty())
                    && rows.stream()
                            .map(row -> row.get(column))
                            .allMatch(cell -> cell.isEmpty() || cell.equals("-") || cell.matches(NUMBER));
        }
    }

    /** @param aspect height as a share of the width */
    record Figure(Picture picture, double aspect, String caption) implements Block {

        public Figure {
            if (!(aspect > 0 && aspect <= MOST_ASPECT)) {
                throw new IllegalArgumentException("A picture's height is a share of its width up to " + MOST_ASPECT);
            }
        }

        /** A picture higher than this would not fit on a page. */
        static final double MOST_ASPECT = 1.35;
    }
}
