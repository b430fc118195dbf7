package pippinry.traits;

import java.util.List;

/**
 * A gene of large effect.
 *
 * @param synonyms other names it is found under
 * @param seen what is seen of it
 * @param effectAllele the allele with the effect, such as {@code Rvi6} or {@code 2}; empty for S
 * @param otherAllele any other allele, such as {@code rvi6}
 * @param frequency of the effect allele among kinds of which nothing is known; used only to weigh what is not on file
 * @param frequencyGround what that frequency rests on, in words
 * @param chromosome linkage group; empty when not known
 * @param position where on it, in words
 */
public record Locus(
        String name,
        List<String> synonyms,
        String seen,
        Dominance dominance,
        String effectAllele,
        String otherAllele,
        double frequency,
        String frequencyGround,
        String chromosome,
        String position,
        String markers,
        String carriers,
        Provenance provenance,
        String note) {

    public Locus {
        synonyms = List.copyOf(synonyms);
        if (effectAllele.isEmpty() != otherAllele.isEmpty()) {
            throw new IllegalArgumentException("both alleles or none");
        }
        if (!(frequency >= 0 && frequency <= 1)) {
            throw new IllegalArgumentException("a frequency from 0 to 1");
        }
    }

    public boolean called(String text) {
        return name.equals(text) || synonyms.contains(text);
    }
}
