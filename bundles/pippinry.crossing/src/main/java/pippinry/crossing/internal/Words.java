package pippinry.crossing.internal;

import java.util.Locale;

/** Puts figures into sentences, alike on every computer. */
public final class Words {

    private Words() {}

    public static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    /** A share in words a breeder uses: one in two, one in sixteen, else per cent. */
    public static String share(double share) {
        if (share >= 0.9995) {
            return "all";
        }
        double oneIn = 1 / share;
        double whole = Math.rint(oneIn);
        if (share > 0 && whole <= 64 && Math.abs(oneIn - whole) < 0.01 * whole) {
            return "one in " + (long) whole;
        }
        return percent(share);
    }

    public static String percent(double share) {
        if (share > 0 && share < 0.001) {
            return "under 0.1 %";
        }
        return say(share < 0.1 ? "%.2g %%" : "%.0f %%", 100 * share);
    }
}
