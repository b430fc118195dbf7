package pippinry.labels.internal.code;

/** A dark rectangle of a code, in whole modules from its top left corner. */
public record Bar(int x, int y, int width, int height) {
    public Bar {
        if (x < 0 || y < 0 || width < 1 || height < 1) {
            throw new IllegalArgumentException("Not a bar: " + x + " " + y + " " + width + " " + height);
        }
    }
}
