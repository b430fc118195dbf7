package pippinry.lineage.internal.chart;

/** Where a card lies, from its left upper corner. */
public record Place(double x, double y, double width, double height) {

    public boolean contains(double px, double py) {
        return px >= x && px <= x + width && py >= y && py <= y + height;
    }

    public double middleX() {
        return x + width / 2;
    }

    public double middleY() {
        return y + height / 2;
    }
}
