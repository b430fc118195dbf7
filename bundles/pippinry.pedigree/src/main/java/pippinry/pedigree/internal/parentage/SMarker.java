package pippinry.pedigree.internal.parentage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pippinry.traits.AlleleSeries;
import pippinry.traits.SAllele;
import pippinry.traits.SGenotype;
import pippinry.traits.SParentage;

/**
 * The self-incompatibility locus: pollen whose allele is in the style does not get through. All genotypes are of one series
 * whose alleles have frequencies. A genotype of the population has two different alleles, in proportion to their frequencies;
 * two alike, which only self-compatibility or a wrong reading gives, count by chance.
 * With a triploid among child and parents a parentage is either excluded or says nothing.
 */
final class SMarker implements Marker {
    private static final int DIPLOID = 2;
    private static final int MOST_GAPS = 3;
    private static final double NEVER_COUNTED = 0.001;

    private final AlleleSeries series;
    private final SGenotype[] genotypes;
    private final double errorRate;

    /** @param genotypes by individual, null where nothing was read */
    SMarker(AlleleSeries series, SGenotype[] genotypes, double errorRate) {
        if (series.frequencies().isEmpty()) throw new IllegalArgumentException("a series with frequencies");
        this.series = series;
        this.genotypes = genotypes.clone();
        this.errorRate = errorRate;
    }

    @Override
    public String name() {
        return "S-alleles";
    }

    @Override
    public boolean read(int who) {
        return genotypes[who] != null && !genotypes[who].blank();
    }

    @Override
    public double errorRate() {
        return errorRate;
    }

    @Override
    public double fromParents(int child, int seedParent, int pollenParent) {
        SGenotype seed = genotype(seedParent);
        SGenotype pollen = genotype(pollenParent);
        if (gaps(seed) + gaps(pollen) > MOST_GAPS) return inPopulation(child);
        OptionalDouble known = SParentage.probability(genotypes[child], seed, pollen);
        if (known.isPresent()) return known.getAsDouble();
        return SParentage.possible(genotypes[child], seed, pollen) ? inPopulation(child) : 0;
    }

    private SGenotype genotype(int who) {
        return who == ANYBODY || genotypes[who] == null ? SGenotype.unknown(series, DIPLOID) : genotypes[who];
    }

    private static long gaps(SGenotype genotype) {
        return genotype.alleles().stream().filter(allele -> !allele.known()).count();
    }

    @Override
    public double fromSelfing(int child, int parent) {
        if (genotype(parent).ploidy() != DIPLOID || genotypes[child].ploidy() != DIPLOID) return inPopulation(child);
        double chance = 0;
        for (SAllele egg : genotype(parent).alleles()) {
            for (SAllele grain : genotype(parent).alleles()) chance += fits(child, egg, grain) / DIPLOID / DIPLOID;
        }
        return chance;
    }

    /** Chance that this egg and this grain read as the child does; an allele that is not known may be any. */
    private double fits(int child, SAllele egg, SAllele grain) {
        List<SAllele> wanted = new ArrayList<>(genotypes[child].alleles());
        double chance = 1;
        for (SAllele given : List.of(egg, grain)) {
            if (!given.known() || wanted.remove(given)) continue;
            if (!wanted.remove(SAllele.UNKNOWN)) return 0;
        }
        for (SAllele left : wanted) {
            if (egg.known() && grain.known() && left.known()) return 0;
            chance *= left.known() ? frequency(left) : 1;
        }
        return chance;
    }

    @Override
    public double inPopulation(int child) {
        SGenotype genotype = genotypes[child];
        if (genotype.ploidy() != DIPLOID) return 1;
        SAllele one = genotype.alleles().get(0);
        SAllele other = genotype.alleles().get(1);
        if (!one.known()) return 1;
        if (!other.known()) return 2 * frequency(one) * (1 - frequency(one)) / twoDifferent();
        int orders = one.equals(other) ? 1 : 2;
        return orders * frequency(one) * frequency(other) / twoDifferent();
    }

    private double twoDifferent() {
        return 1
                - series.frequencies().values().stream().mapToDouble(f -> f * f).sum();
    }

    private double frequency(SAllele allele) {
        return Math.max(NEVER_COUNTED, series.frequencies().getOrDefault(allele.name(), 0.0));
    }
}
