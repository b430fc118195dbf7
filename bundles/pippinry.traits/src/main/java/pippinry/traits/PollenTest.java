package pippinry.traits;

import java.util.ArrayList;
import java.util.List;

/** Which pollen grains a style lets through, with every allele known. */
final class PollenTest {

    private final List<SAllele> style;
    private final List<SAllele> pollen;
    private final List<Integer> through = new ArrayList<>();

    PollenTest(List<SAllele> style, List<SAllele> pollen) {
        this.style = style;
        this.pollen = pollen;
        for (int i = 0; i < pollen.size(); i++) {
            if (passes(pollen.get(i))) {
                through.add(i);
            }
        }
    }

    /** The rule itself, also for a single grain. */
    boolean passes(SAllele grain) {
        return style.stream().noneMatch(allele -> allele.stops(grain));
    }

    /** Share of the grains that work. */
    double share() {
        return (double) through.size() / pollen.size();
    }

    Fertility fertility() {
        return through.isEmpty() ? Fertility.NONE : through.size() == pollen.size() ? Fertility.FULL : Fertility.HALF;
    }

    /** The alleles that come through. */
    List<SAllele> grains() {
        return through.stream().map(pollen::get).toList();
    }

    /**
     * Adds the seedlings' shares.
     *
     * @param sums by the place of the egg's allele in the style and of the grain's in the pollen parent
     */
    void addOffspring(double weight, double[][] sums) {
        for (double[] row : sums) {
            for (int grain : through) {
                row[grain] += weight / (style.size() * through.size());
            }
        }
    }
}
