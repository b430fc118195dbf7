package pippinry.traits;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Goes through what the missing alleles of some genotypes may be.
 *
 * <p>Where the series says how common alleles are, every allele is tried with its frequency. Where it does not, only the
 * alleles that are named anywhere in the question are tried, and beside them one stranger for each gap; then there are
 * cases but no probabilities. A genotype has no allele twice unless one is self-compatible.
 */
final class Unknowns {

    private static final int MOST_GAPS = 3;

    /** One way to fill the gaps: the genotypes' alleles as they would be, in their order. */
    record Filled(double weight, List<List<SAllele>> genotypes) {}

    private final List<SGenotype> genotypes;
    private final List<SAllele> candidates;
    private final boolean weighted;

    private Unknowns(List<SGenotype> genotypes, boolean weighted) {
        this.genotypes = genotypes;
        this.weighted = weighted;
        this.candidates = weighted ? List.copyOf(genotypes.get(0).series().alleles()) : named(genotypes);
    }

    /** With probabilities where there are any; more than three gaps leave nothing worth weighing. */
    static Unknowns weighed(List<SGenotype> genotypes) {
        boolean counted = !genotypes.get(0).series().frequencies().isEmpty();
        return new Unknowns(genotypes, counted && gaps(genotypes) <= MOST_GAPS);
    }

    /** Only what may be, without probabilities. */
    static Unknowns cases(List<SGenotype> genotypes) {
        return new Unknowns(genotypes, false);
    }

    private static long gaps(List<SGenotype> genotypes) {
        return genotypes.stream()
                .flatMap(genotype -> genotype.alleles().stream())
                .filter(allele -> !allele.known())
                .count();
    }

    /** True when the weights of the ways are probabilities. */
    boolean weighted() {
        return weighted || genotypes.stream().allMatch(SGenotype::complete);
    }

    /** Every way, with weights that sum to 1. */
    List<Filled> ways() {
        List<Filled> ways = new ArrayList<>();
        fill(0, 0, 1, new ArrayList<>(), ways);
        double total = ways.stream().mapToDouble(Filled::weight).sum();
        return ways.stream()
                .map(way -> new Filled(way.weight() / total, way.genotypes()))
                .toList();
    }

    private void fill(int genotype, int slot, double weight, List<List<SAllele>> done, List<Filled> ways) {
        if (genotype == genotypes.size()) {
            ways.add(new Filled(weight, done.stream().map(List::copyOf).toList()));
            return;
        }
        List<SAllele> alleles = genotypes.get(genotype).alleles();
        if (slot == alleles.size()) {
            fill(genotype + 1, 0, weight, done, ways);
            return;
        }
        if (slot == 0) {
            done.add(new ArrayList<>());
        }
        List<SAllele> own = done.get(genotype);
        for (SAllele allele : choices(alleles.get(slot))) {
            if (alleles.get(slot).known() || fits(allele, own)) {
                own.add(allele);
                fill(genotype, slot + 1, weight * weight(alleles.get(slot), allele), done, ways);
                own.remove(own.size() - 1);
            }
        }
        if (slot == 0) {
            done.remove(done.size() - 1);
        }
    }

    private Collection<SAllele> choices(SAllele written) {
        return written.known() ? List.of(written) : candidates;
    }

    private double weight(SAllele written, SAllele tried) {
        return written.known() || !weighted
                ? 1
                : genotypes.get(0).series().frequencies().get(tried.name());
    }

    /** Known alleles stand before unknown ones, so looking back is enough. */
    private static boolean fits(SAllele allele, List<SAllele> own) {
        return allele.selfCompatible() || !own.contains(allele);
    }

    private static List<SAllele> named(List<SGenotype> genotypes) {
        Set<SAllele> named = new LinkedHashSet<>();
        int gaps = 0;
        for (SGenotype genotype : genotypes) {
            for (SAllele allele : genotype.alleles()) {
                if (allele.known()) {
                    named.add(allele);
                } else {
                    named.add(SAllele.ordinary("another " + ++gaps));
                }
            }
        }
        return List.copyOf(named);
    }
}
