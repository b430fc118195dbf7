package pippinry.traits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the S-alleles of two genotypes say about crossing them, the first as seed parent.
 *
 * <p>Gametophytic self-incompatibility, one locus: the style shows all its alleles, a pollen grain the one it carries, and a
 * grain whose allele is in the style stops. Seed parent SaSb with pollen SaSd gives SaSd and SbSd, 1:1, and the other way
 * round SaSb and SbSd. Zisovich et al. (European pear) and Guerra et al. (Japanese plum), abstracts; ratios as in Nature
 * Plants 2020, 6:131-142, Table 1. Alleles that are not known are tried one by one, see {@link Unknowns}.
 *
 * <p>Tetraploids and hexaploids are not judged: there a grain carries several alleles and one match stops it (Hauck et
 * al. 2006, Genetics 172:1191-1198).
 */
public final class Compatibility {

    private static final Comparator<String> BY_NAME = Comparator.comparing(Compatibility::sortKey);

    private final Map<Fertility, Double> cases;
    private final boolean weighted;
    private final double pollenShare;
    private final Map<String, Double> offspring;
    private final List<String> notes;

    private Compatibility(
            Map<Fertility, Double> cases,
            boolean weighted,
            double pollenShare,
            Map<String, Double> offspring,
            List<String> notes) {
        this.cases = new EnumMap<>(cases);
        this.weighted = weighted;
        this.pollenShare = pollenShare;
        this.offspring = offspring;
        this.notes = List.copyOf(notes);
    }

    /** Judges a cross; genotypes of different series and higher ploidies get {@link Fertility#UNKNOWN} with a note. */
    public static Compatibility of(SGenotype seed, SGenotype pollen) {
        if (!seed.sameSeries(pollen)) {
            return unjudged("The S-alleles are named in different series (" + seed.series() + ", " + pollen.series()
                    + "); the same name is not the same allele, so they are not compared.");
        }
        if (seed.ploidy() > 3 || pollen.ploidy() > 3) {
            return unjudged("More than three sets of chromosomes: the rule for diploids does not apply.");
        }
        return judged(seed, pollen);
    }

    /** A cross of which nothing can be said, with the reason. */
    public static Compatibility unjudged(String why) {
        return new Compatibility(Map.of(Fertility.UNKNOWN, 1.0), false, Double.NaN, Map.of(), List.of(why));
    }

    private static Compatibility judged(SGenotype seed, SGenotype pollen) {
        Unknowns unknowns = Unknowns.weighed(List.of(seed, pollen));
        boolean weighted = unknowns.weighted();
        Map<Fertility, Double> cases = new EnumMap<>(Fertility.class);
        double[][] offspring = new double[seed.ploidy()][pollen.ploidy()];
        double share = 0;
        for (Unknowns.Filled way : unknowns.ways()) {
            PollenTest test =
                    new PollenTest(way.genotypes().get(0), way.genotypes().get(1));
            cases.merge(test.fertility(), way.weight(), Double::sum);
            share += way.weight() * test.share();
            test.addOffspring(way.weight(), offspring);
        }
        boolean known = weighted || cases.size() == 1;
        return new Compatibility(
                cases,
                weighted,
                known ? share : Double.NaN,
                weighted ? shares(seed, pollen, offspring) : Map.of(),
                notes(seed, pollen));
    }

    /** Genotypes under the names their alleles were written with; none where a parent is triploid. */
    private static Map<String, Double> shares(SGenotype seed, SGenotype pollen, double[][] sums) {
        Map<String, Double> offspring = new TreeMap<>(BY_NAME);
        double total = 0;
        for (int i = 0; i < sums.length && !seed.triploid() && !pollen.triploid(); i++) {
            for (int j = 0; j < sums[i].length; j++) {
                String genotype = Stream.of(
                                seed.alleles().get(i), pollen.alleles().get(j))
                        .sorted()
                        .map(SAllele::name)
                        .collect(Collectors.joining("/"));
                if (sums[i][j] > 0) {
                    offspring.merge(genotype, sums[i][j], Double::sum);
                    total += sums[i][j];
                }
            }
        }
        double all = total;
        offspring.replaceAll((genotype, share) -> share / all);
        return offspring;
    }

    private static List<String> notes(SGenotype seed, SGenotype pollen) {
        List<String> notes = new ArrayList<>();
        if (!seed.complete() || !pollen.complete()) {
            notes.add("An S-allele is not known; the verdict weighs what it may be.");
        }
        if (pollen.triploid()) {
            notes.add(
                    "The pollen parent is triploid: most of its grains are unbalanced, shrunken and germinate poorly, and"
                            + " the seedlings are weak. Take a diploid pollen parent where you can; S ratios cannot be foretold.");
        }
        if (seed.triploid()) {
            notes.add("The seed parent is triploid: fruit sets, but seeds are few and many seedlings are weak;"
                    + " S ratios cannot be foretold.");
        }
        return notes;
    }

    public Fertility fertility() {
        return cases.size() == 1 ? cases.keySet().iterator().next() : Fertility.UNKNOWN;
    }

    /** Every fertility that what is known leaves open. */
    public Set<Fertility> possible() {
        return Set.copyOf(cases.keySet());
    }

    /** Probability of a fertility, or NaN where nothing is known of how common alleles are. */
    public double probability(Fertility fertility) {
        return weighted
                ? cases.getOrDefault(fertility, 0.0)
                : cases.size() == 1 && cases.containsKey(fertility) ? 1 : Double.NaN;
    }

    /** Share of the pollen grains that the style lets through, expected over what is not known; NaN if it cannot be said. */
    public double pollenShare() {
        return pollenShare;
    }

    /**
     * Shares of the S-genotypes among the seedlings; alleles that are not known stay {@code S?}. Empty when no seed is
     * to be had, when a parent is triploid, or when the shares cannot be known.
     */
    public Map<String, Double> offspring() {
        return new LinkedHashMap<>(offspring);
    }

    /** Warnings and reasons, as sentences. */
    public List<String> notes() {
        return notes;
    }

    private static String sortKey(String genotype) {
        return Arrays.stream(genotype.split("/"))
                .map(name -> name.replaceAll("\\D", "").isEmpty()
                        ? "999999" + name
                        : "%06d%s".formatted(Long.parseLong(name.replaceAll("\\D", "")), name))
                .collect(Collectors.joining("/"));
    }
}
