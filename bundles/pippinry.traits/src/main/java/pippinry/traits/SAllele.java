package pippinry.traits;

/**
 * One allele of the self-incompatibility locus S.
 *
 * @param name as written, such as {@code S2}; {@code S?} is an allele that is not known
 * @param rejects the pollen that a style with this allele rejects, by name; empty when the style has lost its function
 * @param answersAs what pollen with this allele is taken for by a style; empty when no style rejects it
 */
public record SAllele(String name, String rejects, String answersAs) implements Comparable<SAllele> {

    public static final SAllele UNKNOWN = new SAllele("S?", "", "");

    /** An ordinary allele: it rejects its own kind and is rejected as its own kind. */
    public static SAllele ordinary(String name) {
        return new SAllele(name, name, name);
    }

    public boolean known() {
        return !name.equals(UNKNOWN.name);
    }

    /** True when the allele can pass a style of its own kind, so that selfing may give seed. */
    public boolean selfCompatible() {
        return known() && !rejects.equals(answersAs);
    }

    /** True when a style with this allele stops pollen with the other. */
    public boolean stops(SAllele pollen) {
        return !rejects.isEmpty() && rejects.equals(pollen.answersAs);
    }

    /** By number, then by the rest of the name; what is not known comes last. */
    @Override
    public int compareTo(SAllele other) {
        int order = Long.compare(number(), other.number());
        return order != 0 ? order : name.compareTo(other.name);
    }

    private long number() {
        String digits = name.replaceAll("^S(\\d*).*$", "$1");
        if (!known()) {
            return Long.MAX_VALUE;
        }
        return digits.isEmpty() ? Long.MAX_VALUE - 1 : Long.parseLong(digits);
    }

    @Override
    public String toString() {
        return name;
    }
}
