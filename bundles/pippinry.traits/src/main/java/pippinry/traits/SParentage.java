package pippinry.traits;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether a seedling's S-alleles agree with its parents: every true child of a half-compatible cross carries the pollen
 * parent's allele that is not in the seed parent. Matsumoto 2014, International Journal of Agronomy 2014:138271, marks
 * recorded parentages as wrong by this rule.
 *
 * <p>A triploid child may have an unreduced gamete of either parent. Selfing slips of partly self-fertile parents are not
 * allowed for.
 */
public final class SParentage {

    private SParentage() {}

    /** False when the child cannot come from this cross; true also when too little is known to say. */
    public static boolean possible(SGenotype child, SGenotype seed, SGenotype pollen) {
        if (!comparable(child, seed) || !comparable(child, pollen)) {
            return true;
        }
        if (child.blank() || (seed.blank() && pollen.blank())) {
            return true;
        }
        return Unknowns.cases(List.of(child, seed, pollen)).ways().stream().anyMatch(way -> fits(way.genotypes()));
    }

    /** False when the child cannot have this parent on either side, whoever the other parent was. */
    public static boolean possible(SGenotype child, SGenotype parent) {
        if (!comparable(child, parent) || child.alleles().contains(SAllele.UNKNOWN)) {
            return true;
        }
        return parent.alleles().contains(SAllele.UNKNOWN)
                || parent.alleles().stream().anyMatch(child.alleles()::contains);
    }

    /**
     * Probability that a seedling of this cross has the child's S-genotype; for diploids only, and only where every
     * allele is known or the series says how common alleles are. Zero also when the cross gives no seed.
     */
    public static OptionalDouble probability(SGenotype child, SGenotype seed, SGenotype pollen) {
        List<SGenotype> all = List.of(seed, pollen);
        boolean diploid = child.ploidy() == 2 && seed.ploidy() == 2 && pollen.ploidy() == 2;
        Unknowns unknowns = Unknowns.weighed(all);
        if (!comparable(child, seed) || !comparable(child, pollen) || !diploid || !unknowns.weighted()) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        double seedSet = 0;
        for (Unknowns.Filled way : unknowns.ways()) {
            PollenTest test =
                    new PollenTest(way.genotypes().get(0), way.genotypes().get(1));
            seedSet += test.grains().isEmpty() ? 0 : way.weight();
            sum += way.weight() * diploidChance(child.alleles(), way.genotypes().get(0), test.grains());
        }
        return OptionalDouble.of(seedSet == 0 ? 0 : sum / seedSet);
    }

    private static boolean comparable(SGenotype one, SGenotype other) {
        return one.sameSeries(other) && one.ploidy() <= 3 && other.ploidy() <= 3;
    }

    private static boolean fits(List<List<SAllele>> filled) {
        List<SAllele> child = filled.get(0);
        List<SAllele> seed = filled.get(1);
        List<SAllele> grains = new PollenTest(seed, filled.get(2)).grains();
        if (child.size() == 2) {
            return diploidChance(child, seed, grains) > 0;
        }
        return fromTwo(child, seed, grains) || fromTwo(child, filled.get(2), seed);
    }

    private static double diploidChance(List<SAllele> child, List<SAllele> eggs, List<SAllele> grains) {
        int hits = 0;
        for (SAllele egg : eggs) {
            for (SAllele grain : grains) {
                hits += matches(child, List.of(egg, grain)) ? 1 : 0;
            }
        }
        return hits == 0 ? 0 : (double) hits / (eggs.size() * grains.size());
    }

    /** Two alleles of one parent in an unreduced gamete and one of the other. */
    private static boolean fromTwo(List<SAllele> child, List<SAllele> whole, List<SAllele> single) {
        for (int i = 0; i < whole.size(); i++) {
            for (int j = i + 1; j < whole.size(); j++) {
                for (SAllele other : single) {
                    if (matches(child, List.of(whole.get(i), whole.get(j), other))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean matches(List<SAllele> child, List<SAllele> given) {
        List<SAllele> left = new ArrayList<>(given);
        for (SAllele allele : child) {
            if (allele.known() && !left.remove(allele)) {
                return false;
            }
        }
        return child.size() == given.size();
    }
}
