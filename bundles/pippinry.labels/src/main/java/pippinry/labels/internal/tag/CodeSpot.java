package pippinry.labels.internal.tag;

import pippinry.labels.internal.code.CodePicture;
import pippinry.labels.internal.paper.Box;
import pippinry.labels.internal.paper.Dots;

/**
 * A code in its place on the label.
 *
 * @param x left side of its dark part in mm
 * @param y upper side of its dark part in mm
 * @param moduleDots printer dots to a module
 */
record CodeSpot(CodePicture picture, double x, double y, int moduleDots, Dots dots) {
    double module() {
        return dots.mm(moduleDots);
    }

    /** Height in mm of the bars of a linear code. */
    double barHeight() {
        return barHeight(picture, module());
    }

    double darkWidth() {
        return picture.columns() * module();
    }

    double darkHeight() {
        return darkHeight(picture, module());
    }

    /** Dark part and quiet zone. */
    Box withQuiet() {
        double beside = picture.symbology().quietBeside() * module();
        double above = picture.symbology().quietAbove() * module();
        return new Box(x - beside, y - above, darkWidth() + 2 * beside, darkHeight() + 2 * above);
    }

    static double darkHeight(CodePicture picture, double module) {
        return picture.symbology().isLinear() ? barHeight(picture, module) : picture.rows() * module;
    }

    private static double barHeight(CodePicture picture, double module) {
        return Math.max(TagStyle.LEAST_BAR, TagStyle.BAR_SHARE * picture.columns() * module);
    }
}
