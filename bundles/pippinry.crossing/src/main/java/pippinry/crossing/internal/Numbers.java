package pippinry.crossing.internal;

import pippinry.commandline.CallRefused;

/** Reads the numbers of a call; what cannot be read is refused with the option, the value and what was expected. */
final class Numbers {

    private Numbers() {}

    /** A share from 0 to 1, as a decimal or as a fraction such as 1/8. */
    static double share(String option, String text) throws CallRefused {
        double value = fraction(option, text);
        if (!(value >= 0 && value <= 1)) {
            throw refused(option, text, "a share from 0 to 1, such as 0.125 or 1/8");
        }
        return value;
    }

    /** A probability strictly between 0 and 1. */
    static double inside(String option, String text) throws CallRefused {
        double value = fraction(option, text);
        if (!(value > 0 && value < 1)) {
            throw refused(option, text, "a number above 0 and below 1, such as 0.95");
        }
        return value;
    }

    /** A whole number no smaller than {@code least}. */
    static long whole(String option, String text, long least) throws CallRefused {
        try {
            long value = Long.parseLong(text.strip());
            if (value >= least && value <= 1_000_000_000L) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw refused(option, text, "a whole number from " + least + " to 1000000000");
    }

    /** A positive or zero part of a ratio. */
    static double part(String option, String text) throws CallRefused {
        double value = fraction(option, text);
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw refused(option, text, "a part of a ratio, such as 3");
        }
        return value;
    }

    static CallRefused refused(String option, String text, String expected) {
        return new CallRefused(option + ": '" + text + "' where " + expected + " was expected");
    }

    private static double fraction(String option, String text) throws CallRefused {
        String[] parts = text.strip().split("/", -1);
        try {
            if (parts.length == 2) {
                return Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
            }
            if (parts.length == 1) {
                return Double.parseDouble(parts[0]);
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw refused(option, text, "a number");
    }
}
