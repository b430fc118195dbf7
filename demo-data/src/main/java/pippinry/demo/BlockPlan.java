package pippinry.demo;

/**
 * A piece of the ground in local metres.
 *
 * @param kind row kind: row, cordon, bed or tree
 */
record BlockPlan(
        String code,
        String kind,
        double x,
        double y,
        int rows,
        int places,
        double rowSpacing,
        double spacing,
        double headland,
        String support,
        String previousCrop,
        String training,
        String note) {

    boolean isBed() {
        return kind.equals("bed");
    }
}
