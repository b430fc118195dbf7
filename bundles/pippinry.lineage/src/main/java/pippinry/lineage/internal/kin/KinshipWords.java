package pippinry.lineage.internal.kin;

import java.util.Locale;

/**
 * Says how near two are, or how inbred one is, by the nearest of the textbook cases: S. Wright (1922) Coefficients of
 * inbreeding and relationship, The American Naturalist 56:330-338. The coancestry of two is the inbreeding of their
 * children. Nearest by ratio, not by difference.
 */
public final class KinshipWords {

    private static final double NOTHING = 0.001;

    private record Case(double value, String parents) {}

    private static final Case[] CASES = {
        new Case(0.5, "one tree with itself"),
        new Case(0.25, "parent and child, or of full sisters"),
        new Case(0.125, "half sisters, or of grandparent and grandchild"),
        new Case(0.0625, "first cousins"),
        new Case(0.03125, "half cousins"),
        new Case(0.015625, "second cousins"),
    };

    private KinshipWords() {}

    /** @param inbreeding from 0 to 1 */
    public static String inbreeding(double inbreeding) {
        return inbreeding < NOTHING
                ? "Its parents share no ancestor on file: not inbred as far as is known."
                : figure(inbreeding) + " inbred: about as a child of " + nearest(inbreeding) + " would be.";
    }

    /** @param coancestry from 0 to 1 */
    public static String coancestry(double coancestry) {
        return coancestry < NOTHING
                ? "Not related as far as is known."
                : "Coancestry " + figure(coancestry) + ": about that of " + nearest(coancestry) + ".";
    }

    /** Three decimals: more would claim to be known. */
    public static String figure(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    private static String nearest(double value) {
        Case nearest = CASES[CASES.length - 1];
        for (Case known : CASES) {
            if (apart(known.value, value) < apart(nearest.value, value)) {
                nearest = known;
            }
        }
        return nearest.parents;
    }

    private static double apart(double one, double other) {
        return Math.abs(Math.log(one / other));
    }
}
