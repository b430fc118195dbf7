package pippinry.traits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The S-alleles of one genotype, in order: two for a diploid, three for a triploid. A sport has those of the clone it
 * sprang from.
 *
 * @param series the numbering in which the names are meant
 */
public record SGenotype(AlleleSeries series, List<SAllele> alleles) {

    private static final Comparator<SAllele> ORDER = Comparator.naturalOrder();

    public SGenotype {
        if (alleles.size() < 2 || alleles.size() > 8) {
            throw new IllegalArgumentException("An S-genotype has two alleles or more (three for a triploid), not "
                    + alleles.size() + "; expected for instance S2/S3");
        }
        alleles = alleles.stream().sorted(ORDER).toList();
    }

    /**
     * Reads {@code S2/S3}, {@code S2S3}, {@code S2/S3/S9}, {@code S5/S?} or {@code ?} (nothing known of a diploid).
     *
     * @throws IllegalArgumentException saying what is wrong and what was expected
     */
    public static SGenotype parse(String text, AlleleSeries series) {
        String trimmed = text.strip();
        if (trimmed.equals("?") || trimmed.equals("S?")) {
            return unknown(series, 2);
        }
        String[] names = trimmed.contains("/") ? trimmed.split("/", -1) : trimmed.split("(?<=.)(?=S)");
        return new SGenotype(
                series,
                Arrays.stream(names).map(String::strip).map(series::allele).toList());
    }

    /** A genotype of which nothing is known but its ploidy. */
    public static SGenotype unknown(AlleleSeries series, int ploidy) {
        List<SAllele> alleles = new ArrayList<>();
        for (int i = 0; i < ploidy; i++) {
            alleles.add(SAllele.UNKNOWN);
        }
        return new SGenotype(series, alleles);
    }

    public int ploidy() {
        return alleles.size();
    }

    public boolean triploid() {
        return ploidy() == 3;
    }

    /** True when no allele is missing. */
    public boolean complete() {
        return alleles.stream().allMatch(SAllele::known);
    }

    /** True when nothing is known of it. */
    public boolean blank() {
        return alleles.stream().noneMatch(SAllele::known);
    }

    public boolean sameSeries(SGenotype other) {
        return series.name().equals(other.series.name());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SGenotype that && sameSeries(that) && alleles.equals(that.alleles);
    }

    @Override
    public int hashCode() {
        return alleles.hashCode();
    }

    @Override
    public String toString() {
        return alleles.stream().map(SAllele::name).collect(Collectors.joining("/"));
    }
}
