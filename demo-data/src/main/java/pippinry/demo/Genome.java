package pippinry.demo;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a tree truly carries: alleles at the loci that decide by themselves, and breeding values of the rest.
 *
 * @param s self-incompatibility alleles, three for a triploid
 * @param loci two alleles at each other locus, true for the one that shows
 * @param values breeding values
 * @param inbreeding F, from the true pedigree
 */
record Genome(List<String> s, Map<Locus, List<Boolean>> loci, Map<Trait, Double> values, double inbreeding) {

    Genome {
        s = List.copyOf(s);
        loci = new EnumMap<>(loci);
        values = new EnumMap<>(values);
    }

    /** Of a rootstock, which is neither crossed nor scored here. */
    static Genome ofStock() {
        return new Genome(List.of(), new EnumMap<>(Locus.class), new EnumMap<>(Trait.class), 0);
    }

    double value(Trait trait) {
        return values.get(trait);
    }

    int copies(Locus locus) {
        return (int) loci.get(locus).stream().filter(shows -> shows).count();
    }

    boolean has(Locus locus) {
        return copies(locus) > 0;
    }

    /** The alleles as a breeder writes them. */
    String written(Locus locus) {
        List<Boolean> pair = loci.get(locus);
        return locus.write(pair.get(0)) + "/" + locus.write(pair.get(1));
    }
}
