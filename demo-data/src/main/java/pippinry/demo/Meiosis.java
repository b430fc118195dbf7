package pippinry.demo;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How seedlings come by their genes. Single genes: one allele from each parent at random (Mendel 1866, Versuche ueber
 * Pflanzenhybriden). S: a pollen tube whose allele the style carries does not grow (de Nettancourt 1977, Incompatibility
 * in Angiosperms), so that only other alleles arrive. The rest: the infinitesimal model, breeding value = mean of the
 * parents + a draw of variance half the additive one times (1 - mean inbreeding of the parents) (Bulmer 1980, The
 * Mathematical Theory of Quantitative Genetics).
 */
final class Meiosis {

    private Meiosis() {}

    /** S-alleles of the pollen that can grow in this style; all of them if style and pollen are of the same tree. */
    static List<String> pollenThatGrows(Genotype style, Genotype pollen) {
        if (style == pollen) {
            return pollen.genome().s();
        }
        return pollen.genome().s().stream()
                .filter(allele -> !style.genome().s().contains(allele))
                .toList();
    }

    static boolean fertile(Genotype style, Genotype pollen) {
        return style != pollen && !pollenThatGrows(style, pollen).isEmpty();
    }

    /** A seedling of two true parents, or of one and stray pollen. */
    static Genotype seedling(
            String code, String cross, int sown, Genotype seed, Optional<Genotype> pollen, double inbreeding) {
        Dice dice = Dice.of("meiosis", code);
        Genome genome = new Genome(
                sAlleles(dice, seed, pollen), loci(dice, seed, pollen), values(dice, seed, pollen), inbreeding);
        return new Genotype(code, genome, Optional.of(seed), pollen, sown, cross);
    }

    private static List<String> sAlleles(Dice dice, Genotype seed, Optional<Genotype> pollen) {
        String fromSeed = dice.one(seed.genome().s());
        List<String> arriving =
                pollen.map(genotype -> pollenThatGrows(seed, genotype)).orElse(Stray.S_ALLELES);
        List<String> growing = pollen.isPresent()
                ? arriving
                : arriving.stream()
                        .filter(allele -> !seed.genome().s().contains(allele))
                        .toList();
        return List.of(fromSeed, dice.one(growing));
    }

    private static Map<Locus, List<Boolean>> loci(Dice dice, Genotype seed, Optional<Genotype> pollen) {
        Map<Locus, List<Boolean>> loci = new EnumMap<>(Locus.class);
        for (Locus locus : Locus.values()) {
            boolean fromSeed = dice.one(seed.genome().loci().get(locus));
            boolean fromPollen = pollen.map(
                            genotype -> dice.one(genotype.genome().loci().get(locus)))
                    .orElseGet(() -> dice.chance(Stray.share(locus)));
            loci.put(locus, new ArrayList<>(List.of(fromSeed, fromPollen)));
        }
        return loci;
    }

    private static Map<Trait, Double> values(Dice dice, Genotype seed, Optional<Genotype> pollen) {
        double inbreeding = (seed.genome().inbreeding()
                        + pollen.map(genotype -> genotype.genome().inbreeding()).orElse(0.0))
                / 2;
        Map<Trait, Double> values = new EnumMap<>(Trait.class);
        for (Trait trait : Trait.values()) {
            double other = pollen.map(genotype -> genotype.genome().value(trait))
                    .orElseGet(() -> dice.normal(trait.mean(), trait.geneticSd()));
            double sampling = trait.geneticSd() * StrictMath.sqrt(0.5 * (1 - inbreeding));
            values.put(trait, (seed.genome().value(trait) + other) / 2 + dice.normal(0, sampling));
        }
        return values;
    }
}
