package pippinry.traits;

import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A numbering of S-alleles. Genotypes are compared only inside one series: the same name in another series is another
 * allele.
 */
public final class AlleleSeries {

    private static final Pattern NAME = Pattern.compile("S[0-9A-Za-z][0-9A-Za-z']*");

    private final String name;
    private final Map<String, SAllele> alleles;
    private final Map<String, Double> frequencies;

    private AlleleSeries(String name, Map<String, SAllele> alleles, Map<String, Double> frequencies) {
        this.name = name;
        this.alleles = Collections.unmodifiableMap(new TreeMap<>(alleles));
        this.frequencies = Collections.unmodifiableMap(new TreeMap<>(frequencies));
    }

    /** A series about which nothing is on file: any name is taken for an ordinary allele. */
    public static AlleleSeries open(String name) {
        return new AlleleSeries(name, Map.of(), Map.of());
    }

    /**
     * A series with a closed list of names.
     *
     * @param frequencies how common alleles are, by name; what is left of 1 is spread evenly over the other names (an
     *     assumption); empty when nothing is known, and then no probability is given for what is not known
     */
    public static AlleleSeries closed(String name, Collection<SAllele> alleles, Map<String, Double> frequencies) {
        Map<String, SAllele> byName = alleles.stream().collect(Collectors.toMap(SAllele::name, Function.identity()));
        double given = frequencies.values().stream().mapToDouble(f -> f).sum();
        if (given > 1 + 1e-9 || !byName.keySet().containsAll(frequencies.keySet())) {
            throw new IllegalArgumentException(
                    "Frequencies of series " + name + " must name its alleles and sum to 1 at most, not " + given);
        }
        return new AlleleSeries(name, byName, frequencies.isEmpty() ? Map.of() : spread(byName, frequencies, given));
    }

    private static Map<String, Double> spread(
            Map<String, SAllele> byName, Map<String, Double> frequencies, double given) {
        Map<String, Double> all = new TreeMap<>(frequencies);
        long others = byName.size() - frequencies.size();
        byName.keySet().forEach(allele -> all.putIfAbsent(allele, Math.max(0, 1 - given) / others));
        return all;
    }

    public String name() {
        return name;
    }

    /** The alleles on file, in order of name; empty for an open series. */
    public Collection<SAllele> alleles() {
        return alleles.values();
    }

    /** How common each allele is; empty when that is not known. */
    public Map<String, Double> frequencies() {
        return frequencies;
    }

    /**
     * The allele of this name.
     *
     * @throws IllegalArgumentException naming the alleles of the series, if it has none of that name
     */
    public SAllele allele(String text) {
        if (text.equals("?") || text.equals(SAllele.UNKNOWN.name())) {
            return SAllele.UNKNOWN;
        }
        SAllele known = alleles.get(text);
        if (known != null) {
            return known;
        }
        if (!alleles.isEmpty()) {
            throw new IllegalArgumentException("'" + text + "' is no S-allele of the series " + name + ", which has "
                    + alleles.values().stream().sorted().map(SAllele::name).collect(Collectors.joining(", ")));
        }
        if (!NAME.matcher(text).matches()) {
            throw new IllegalArgumentException("'" + text + "' is no S-allele; expected a name such as S2, or S?");
        }
        return SAllele.ordinary(text);
    }

    @Override
    public String toString() {
        return name;
    }
}
