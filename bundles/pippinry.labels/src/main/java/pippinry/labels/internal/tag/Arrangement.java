package pippinry.labels.internal.tag;

/** Where number, code and small text stand to each other. */
enum Arrangement {
    /** Code to the left, number and small text beside it. */
    BESIDE,
    /** Number across the top, code below it to the left, small text beside the code. */
    BELOW,
    /** Number, code and small text one under the other. */
    STACKED,
    /** Number, small text, and a linear code along the foot. */
    FOOT,
    /** Number and small text alone. */
    TEXT
}
