package pippinry.traits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
     * Adds the seedlings' genotypes with their shares, each parent's alleles under the names they were written with.
     *
     * @param styleNames the seed parent's alleles as written, in the order of the style
     */
    void addOffspring(List<SAllele> styleNames, List<SAllele> pollenNames, double weight, Map<String, Double> sums) {
        for (SAllele egg : styleNames) {
            for (int i : through) {
                String genotype = Stream.of(egg, pollenNames.get(i))
                        .sorted()
                        .map(SAllele::name)
                        .collect(Collectors.joining("/"));
                sums.merge(genotype, weight / (styleNames.size() * through.size()), Double::sum);
            }
        }
    }
}
