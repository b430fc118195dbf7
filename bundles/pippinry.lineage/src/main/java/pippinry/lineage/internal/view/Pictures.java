package pippinry.lineage.internal.view;

import java.util.List;
import pippinry.panels.Palette;
import pippinry.panels.Picture;

/** Pictures for paper. */
public final class Pictures {

    /** Height of the square as a share of the width of the page. */
    public static final double SQUARE_ASPECT = 0.72;

    private Pictures() {}

    /** Coancestry of each two. */
    public static Picture square(List<String> names, double[][] values) {
        return new HeatMap(names, values, Palette.light());
    }
}
