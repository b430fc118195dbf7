package pippinry.exchange.internal.tables;

/**
 * The row that a change comes from.
 *
 * @param file which of the import's files, from 0
 * @param line physical line on which the row starts, the header is 1
 */
record Origin(int file, long line) {}
