package pippinry.labels.internal.tag;

/**
 * One way of filling a label, the same for all tags of a print.
 *
 * @param numberLines lines over which the number may be spread
 * @param numberShare the most of the text's height that the number may take
 * @param moduleDots printer dots to a module of the code, 0 without a code
 */
record Plan(Arrangement arrangement, int numberLines, double numberShare, int moduleDots) {}
