package pippinry.season.internal.book;

/** How wide a text is, in points. */
@FunctionalInterface
interface Measure {
    double width(String text);
}
