package pippinry.pedigree.internal.parentage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantKind;
import pippinry.model.record.Score;
import pippinry.model.value.Code;
import pippinry.traits.CropPack;
import pippinry.traits.Dominance;
import pippinry.traits.Locus;
import pippinry.traits.LocusEffect;
import pippinry.traits.TraitDefinition;

/**
 * What scores show of a dominant allele that alone decides a noted trait, such as columnar growth. A genotype scored both ways
 * goes by the more frequent one; as often one as the other tells nothing. Limbs are not looked at, since the tree they sit on
 * shapes them.
 */
final class VisibleMarks {
    private final Map<Integer, Integer> shownMoreOften = new HashMap<>();

    private VisibleMarks() {}

    static VisibleMarks of(Program program, CropPack facts, Locus locus, Map<Code<Genotype>, Integer> numbers) {
        VisibleMarks marks = new VisibleMarks();
        if (locus.dominance() != Dominance.DOMINANT) return marks;
        List<LocusEffect> telling = facts.effects().stream()
                .filter(effect -> effect.locus().equals(locus.name()) && tells(facts, effect))
                .toList();
        if (telling.isEmpty()) return marks;
        program.table(Kinds.SCORES).forEach(row -> telling.stream()
                .filter(effect -> effect.trait().equals(row.value().trait()))
                .forEach(effect -> marks.count(program, numbers, row.value(), effect)));
        return marks;
    }

    private static boolean tells(CropPack facts, LocusEffect effect) {
        boolean alone = facts.effects().stream()
                        .filter(other -> other.trait().equals(effect.trait()))
                        .count()
                == 1;
        boolean told = effect.shownLow().isPresent() && effect.otherwiseLow().isPresent();
        boolean noted = facts.trait(effect.trait())
                .map(TraitDefinition::states)
                .map(states -> !states.isEmpty())
                .orElse(false);
        return effect.decides() && alone && told && noted;
    }

    private void count(Program program, Map<Code<Genotype>, Integer> numbers, Score score, LocusEffect effect) {
        OptionalDouble value = score.value().number();
        Integer who = genotype(program, numbers, score.subject().text());
        if (value.isEmpty() || who == null) return;
        boolean shown = within(value.getAsDouble(), effect.shownLow(), effect.shownHigh());
        boolean not = within(value.getAsDouble(), effect.otherwiseLow(), effect.otherwiseHigh());
        if (shown != not) shownMoreOften.merge(who, shown ? 1 : -1, Integer::sum);
    }

    private static boolean within(double value, OptionalDouble low, OptionalDouble high) {
        return value >= low.orElse(Double.NEGATIVE_INFINITY) && value <= high.orElse(Double.POSITIVE_INFINITY);
    }

    private static Integer genotype(Program program, Map<Code<Genotype>, Integer> numbers, String subject) {
        Integer itself = numbers.get(Code.<Genotype>of(subject));
        if (itself != null) return itself;
        return program.find(Kinds.PLANTS, Code.<Plant>of(subject))
                .filter(plant -> !plant.kind().equals(java.util.Optional.of(PlantKind.LIMB)))
                .flatMap(Plant::genotype)
                .map(numbers::get)
                .orElse(null);
    }

    /** Whether there was anything to add. */
    boolean addTo(CopiesRead copies) {
        shownMoreOften.forEach((who, balance) -> {
            if (balance != 0) copies.seen(who, balance > 0);
        });
        return !shownMoreOften.isEmpty();
    }
}
