package pippinry.crossing.internal.genes;

import java.util.Arrays;
import java.util.Locale;
import pippinry.traits.Locus;

/**
 * How many copies of the allele with the effect a parent carries at a locus, as a probability for each number.
 *
 * @param chances for 0, 1 ... copies; they sum to 1
 * @param ground where it comes from, in words
 * @param told false when nothing is on file and only the prior speaks
 */
public record Dosage(double[] chances, String ground, boolean told) {

    public Dosage {
        chances = chances.clone();
        double sum = Arrays.stream(chances).sum();
        if (chances.length < 2 || Math.abs(sum - 1) > 1e-9) {
            throw new IllegalArgumentException("Chances of a dosage sum to 1, not " + sum);
        }
    }

    @Override
    public double[] chances() {
        return chances.clone();
    }

    public int ploidy() {
        return chances.length - 1;
    }

    public double chance(int copies) {
        return chances[copies];
    }

    /** Expected share of the gametes that carry the effect allele. */
    public double gamete() {
        double sum = 0;
        for (int copies = 0; copies < chances.length; copies++) {
            sum += copies * chances[copies];
        }
        return sum / ploidy();
    }

    /** True when the number of copies is certain. */
    public boolean certain() {
        return Arrays.stream(chances).anyMatch(chance -> chance == 1);
    }

    /** Nothing told: every allele carries the effect with the given frequency, independently (Hardy-Weinberg). */
    public static Dosage prior(int ploidy, double frequency) {
        return new Dosage(filled(0, ploidy, frequency, ploidy), "not on file", false);
    }

    /**
     * Reads alleles as written, such as {@code Rvi6/rvi6}, {@code 2/2} or {@code Rvi6/?}.
     *
     * @param frequency of the effect allele, used for what is not known
     * @throws IllegalArgumentException naming an allele that the locus does not have
     */
    public static Dosage read(String text, Locus locus, double frequency, String ground) {
        String[] alleles = text.strip().split("/", -1);
        if (alleles.length < 2) {
            throw new IllegalArgumentException("'" + text + "' at " + locus.name() + ": expected two alleles as "
                    + locus.effectAllele() + "/" + locus.otherAllele());
        }
        int effect = 0;
        int unknown = 0;
        for (String allele : alleles) {
            if (allele.strip().equals("?")) {
                unknown++;
            } else if (isEffect(allele.strip(), locus)) {
                effect++;
            }
        }
        return new Dosage(filled(effect, unknown, frequency, alleles.length), ground, true);
    }

    private static boolean isEffect(String allele, Locus locus) {
        if (allele.equals(locus.effectAllele()) || locus.synonyms().contains(allele)) {
            return true;
        }
        boolean other = allele.equals(locus.otherAllele())
                || locus.synonyms().stream().anyMatch(synonym -> allele.equals(lowered(synonym)));
        if (!other) {
            throw new IllegalArgumentException("'" + allele + "' is no allele of " + locus.name() + ", which has "
                    + locus.effectAllele() + " and " + locus.otherAllele());
        }
        return false;
    }

    private static String lowered(String name) {
        return name.isEmpty() ? name : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    /** Hardy-Weinberg over the dosages that the known alleles allow. */
    private static double[] filled(int known, int unknown, double frequency, int ploidy) {
        double[] chances = new double[ploidy + 1];
        double sum = 0;
        double ways = 1;
        for (int copies = 0; copies <= ploidy; copies++) {
            if (copies >= known && copies <= known + unknown) {
                chances[copies] = ways * Math.pow(frequency, copies) * Math.pow(1 - frequency, ploidy - copies);
                sum += chances[copies];
            }
            ways = ways * (ploidy - copies) / (copies + 1);
        }
        for (int copies = 0; copies <= ploidy; copies++) {
            chances[copies] = sum > 0 ? chances[copies] / sum : copies == known ? 1 : 0;
        }
        return chances;
    }
}
