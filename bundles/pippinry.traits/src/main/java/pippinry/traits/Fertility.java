package pippinry.traits;

import java.util.Locale;

/** Whether pollen of one genotype can fertilise another. */
public enum Fertility {
    /** Every grain works. */
    FULL,
    /** Some grains are rejected, the others work. */
    HALF,
    /** Every grain is rejected: a strong warning, not a proof that no seed can form. */
    NONE,
    /** It cannot be said from what is on file. */
    UNKNOWN;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
