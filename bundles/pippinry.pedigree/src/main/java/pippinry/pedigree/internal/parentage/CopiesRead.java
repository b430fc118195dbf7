package pippinry.pedigree.internal.parentage;

import java.util.Arrays;
import pippinry.traits.Dominance;
import pippinry.traits.Locus;

/** What is read of everybody at a locus with two kinds of alleles, on the way to its marker. */
final class CopiesRead {
    private static final int DIPLOID = 2;
    private static final double RARE = 0.01;

    private final Locus locus;
    private final double[][] readings;
    private double effects;
    private double known = 1;

    CopiesRead(Locus locus, int individuals) {
        this.locus = locus;
        this.readings = new double[individuals][];
        this.effects = Math.min(1 - RARE, Math.max(RARE, locus.frequency()));
    }

    /** Alleles as written, such as {@code Rvi6/?}; whatever is not two alleles is passed over. */
    void alleles(int who, String text) {
        String[] alleles = text.strip().split("/", -1);
        if (alleles.length != DIPLOID) return;
        int effect = (int) Arrays.stream(alleles).filter(this::isEffect).count();
        int unknown = (int) Arrays.stream(alleles).filter("?"::equals).count();
        readings[who] = new double[DIPLOID + 1];
        Arrays.fill(readings[who], effect, effect + unknown + 1, 1);
        effects += effect;
        known += DIPLOID - unknown;
    }

    private boolean isEffect(String allele) {
        return allele.equals(locus.effectAllele()) || locus.synonyms().contains(allele);
    }

    /** The effect is seen, or seen to be missing. What alleles say is not overruled by it. */
    void seen(int who, boolean shown) {
        if (readings[who] != null || locus.dominance() != Dominance.DOMINANT) return;
        readings[who] = shown ? new double[] {0, 1, 1} : new double[] {1, 0, 0};
        effects += shown ? 1 : 0;
        known += shown ? 1 : DIPLOID;
    }

    boolean any() {
        return Arrays.stream(readings).anyMatch(reading -> reading != null);
    }

    /** The share of the effect allele is counted over the alleles known, with one more put in that has the pack's frequency. */
    Marker marker(double errorRate) {
        return new DosageMarker(locus.name(), readings, effects / known, errorRate);
    }
}
