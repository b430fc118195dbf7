package pippinry.labels.internal.tag;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What came of a print.
 *
 * @param labels tags times copies
 * @param nextFree the first label still free on the last sheet, counted from 1; empty when the sheet is full
 * @param module width in mm of the smallest module of a code; empty without codes
 * @param readableFrom distance in metres from which every number can be read
 * @param warnings in words: what was left off, small or lacking
 */
public record TagsPrinted(
        int tags,
        int labels,
        int pages,
        OptionalInt nextFree,
        OptionalDouble module,
        double readableFrom,
        List<String> warnings) {}
