package pippinry.labels.internal.code;

import java.util.List;

/**
 * A code as dark rectangles on white, in modules; the quiet zone is not counted in. A linear code is one module high and
 * is stretched when it is drawn.
 */
public record CodePicture(Symbology symbology, String text, int columns, int rows, List<Bar> bars) {
    public CodePicture {
        bars = List.copyOf(bars);
        for (Bar bar : bars) {
            if (bar.x() + bar.width() > columns || bar.y() + bar.height() > rows) {
                throw new IllegalArgumentException(bar + " leaves the code of " + columns + " by " + rows);
            }
        }
    }

    /** Modules across, quiet zone included. */
    public int columnsWithQuiet() {
        return columns + 2 * symbology.quietBeside();
    }

    /** Modules down, quiet zone included. */
    public int rowsWithQuiet() {
        return rows + 2 * symbology.quietAbove();
    }
}
