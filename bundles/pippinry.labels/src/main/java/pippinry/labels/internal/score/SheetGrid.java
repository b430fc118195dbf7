package pippinry.labels.internal.score;

import pippinry.labels.internal.paper.Box;

/**
 * Where things stand on a page of a sheet, A4, in mm: upright for few columns, on its long side for many. The left margin
 * leaves room for the clip of a board.
 */
record SheetGrid(double width, double height, double boxWidth, int columns) {
    static final double LEFT = 14;
    static final double RIGHT = 8;
    static final double TOP = 8;
    static final double HEAD = 24;
    static final double TITLES = 13;
    static final double FOOT = 12;
    static final double LINE = 8.5;
    static final double HEADING = 7;
    static final double PLACE = 13;
    static final double CODE = 9;
    static final double NUMBER = 36;

    private static final double LEAST_NOTE = 20;
    private static final double WIDEST_BOX = 20;
    private static final double SHORT_SIDE = 210;
    private static final double LONG_SIDE = 297;
    private static final int MOST_UPRIGHT = 7;

    static SheetGrid of(ScoreSheet sheet) {
        int columns = sheet.columns().size();
        boolean upright = columns <= MOST_UPRIGHT;
        double width = upright ? SHORT_SIDE : LONG_SIDE;
        double free = width - LEFT - RIGHT - PLACE - CODE - NUMBER - LEAST_NOTE;
        return new SheetGrid(width, upright ? LONG_SIDE : SHORT_SIDE, Math.min(WIDEST_BOX, free / columns), columns);
    }

    double firstLine() {
        return TOP + HEAD + TITLES;
    }

    /** Room for lines and headings on a page. */
    double room() {
        return height - firstLine() - FOOT;
    }

    double right() {
        return width - RIGHT;
    }

    double code() {
        return LEFT + PLACE;
    }

    double number() {
        return code() + CODE;
    }

    double box(int column) {
        return number() + NUMBER + column * boxWidth;
    }

    /** The last column is for remarks. */
    Box note(double y) {
        double x = box(columns);
        return new Box(x, y, right() - x, LINE);
    }
}
