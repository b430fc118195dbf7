package pippinry.crossing.internal.genes;

import java.util.List;

/**
 * Loci that are inherited together, in map order, with the chance of recombination between neighbours.
 *
 * <p>Recombinations in different intervals are taken as independent, so that for three loci and more only the
 * neighbouring chances are exact under a map function with interference.
 *
 * @param loci names, in map order; a locus by itself is a group of one
 * @param recombination between each locus and the next, one fewer than loci
 */
public record LinkageGroup(List<String> loci, double[] recombination) {

    /** More loci in one group would make too many kinds of gametes. */
    public static final int MOST_LOCI = 10;

    public LinkageGroup {
        loci = List.copyOf(loci);
        recombination = recombination.clone();
        if (loci.isEmpty() || loci.size() > MOST_LOCI || recombination.length != loci.size() - 1) {
            throw new IllegalArgumentException(loci.size() + " loci with " + recombination.length + " distances");
        }
        for (double r : recombination) {
            if (!(r >= 0 && r <= 0.5)) {
                throw new IllegalArgumentException("Recombination lies from 0 to 1/2, not at " + r);
            }
        }
    }

    public static LinkageGroup alone(String locus) {
        return new LinkageGroup(List.of(locus), new double[0]);
    }

    @Override
    public double[] recombination() {
        return recombination.clone();
    }

    /**
     * Share of each kind of gamete of a parent whose two chromosomes are known. A gamete is told by the bits of the
     * loci at which it carries the effect allele, the first locus in bit 0.
     *
     * @param one bits of one chromosome
     * @param other bits of the other
     */
    public double[] gametes(int one, int other) {
        int kinds = 1 << loci.size();
        double[] fromOne = new double[kinds];
        double[] fromOther = new double[kinds];
        fromOne[one & 1] += 0.5;
        fromOther[other & 1] += 0.5;
        for (int locus = 1; locus < loci.size(); locus++) {
            double r = recombination[locus - 1];
            double[] nextOne = new double[kinds];
            double[] nextOther = new double[kinds];
            int bit = 1 << locus;
            for (int gamete = 0; gamete < bit; gamete++) {
                nextOne[gamete | one & bit] += fromOne[gamete] * (1 - r) + fromOther[gamete] * r;
                nextOther[gamete | other & bit] += fromOther[gamete] * (1 - r) + fromOne[gamete] * r;
            }
            fromOne = nextOne;
            fromOther = nextOther;
        }
        for (int gamete = 0; gamete < kinds; gamete++) {
            fromOne[gamete] += fromOther[gamete];
        }
        return fromOne;
    }
}
