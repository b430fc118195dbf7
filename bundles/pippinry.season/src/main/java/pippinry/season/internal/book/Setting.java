package pippinry.season.internal.book;

/** Measures of the printed page, in points of 1/72 inch. */
final class Setting {

    static final float PAGE_WIDTH = 595.28f;
    static final float PAGE_HEIGHT = 841.89f;
    static final float MARGIN = 56;
    static final float TOP = PAGE_HEIGHT - 60;
    static final float BOTTOM = 62;

    /** Width of text and pictures; HTML draws pictures at the same width. */
    static final int TEXT_WIDTH = 483;

    private Setting() {}
}
