package pippinry.labels.internal.sheet;

import pippinry.labels.internal.paper.Box;

/**
 * A sheet of equal labels, in millimetres. A roll is a sheet with one label.
 *
 * @param name what a person types and reads, such as {@code A4-21}
 * @param left from the left edge of the page to the first label
 * @param top from the upper edge of the page to the first label
 * @param pitchX from a label's left side to that of the next
 * @param pitchY from a label's upper side to that of the next
 * @param basis where the measures come from
 */
public record SheetFormat(
        String name,
        double pageWidth,
        double pageHeight,
        int columns,
        int rows,
        double labelWidth,
        double labelHeight,
        double left,
        double top,
        double pitchX,
        double pitchY,
        String basis) {
    /** Measures are given to a hundredth of a millimetre. */
    private static final double ROUNDING = 0.02;

    public SheetFormat {
        require(!name.isBlank(), "a sheet has a name");
        require(columns >= 1 && rows >= 1, "a sheet has at least one label");
        require(labelWidth >= 5 && labelHeight >= 5, "a label is at least 5 mm wide and high");
        require(left >= 0 && top >= 0, "the first label lies on the page");
        require(pitchX >= labelWidth - ROUNDING, "labels of a row do not overlap");
        require(pitchY >= labelHeight - ROUNDING, "labels of a column do not overlap");
        require(left + (columns - 1) * pitchX + labelWidth <= pageWidth + ROUNDING, "the last label of a row fits");
        require(top + (rows - 1) * pitchY + labelHeight <= pageHeight + ROUNDING, "the last label of a column fits");
    }

    private static void require(boolean holds, String rule) {
        if (!holds) {
            throw new IllegalArgumentException("expected that " + rule);
        }
    }

    /** One label to a page, for printers that feed a roll. */
    public static SheetFormat roll(double width, double height) {
        String name = "roll-" + plain(width) + "x" + plain(height);
        return new SheetFormat(
                name, width, height, 1, 1, width, height, 0, 0, width, height, "measures given by the person");
    }

    /** Labels on one page. */
    public int count() {
        return columns * rows;
    }

    /** Where a label lies on its page; the first is 0, then to the right and row by row. */
    public Box label(int index) {
        if (index < 0 || index >= count()) {
            throw new IndexOutOfBoundsException("Sheet " + name + " has labels 1 to " + count());
        }
        double x = left + index % columns * pitchX;
        double y = top + index / columns * pitchY;
        return new Box(x, y, labelWidth, labelHeight);
    }

    public double labelArea() {
        return labelWidth * labelHeight;
    }

    /** Name and size of a label in a sentence: {@code A4-21 (63.5 x 38.1 mm)}. */
    @Override
    public String toString() {
        return name + " (" + plain(labelWidth) + " x " + plain(labelHeight) + " mm)";
    }

    private static String plain(double millimetres) {
        return millimetres == Math.rint(millimetres) ? String.valueOf((long) millimetres) : String.valueOf(millimetres);
    }
}
