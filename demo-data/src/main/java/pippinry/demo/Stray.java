package pippinry.demo;

import java.util.List;

/** The pollen that bees bring to Larkmoor from gardens round about: common alleles, seldom a resistance. */
final class Stray {

    /** Frequent in a northern European set of 104 apples (abstract quoted in the reference: S7, S3, S5, S1, S2). */
    static final List<String> S_ALLELES = List.of("S7", "S7", "S3", "S3", "S5", "S1", "S2", "S9", "S10");

    private Stray() {}

    static double share(Locus locus) {
        return switch (locus) {
            case RVI6 -> 0.03;
            case ACS1 -> 0.4;
            case MA -> 0.75;
            case MYB1 -> 0.6;
        };
    }
}
