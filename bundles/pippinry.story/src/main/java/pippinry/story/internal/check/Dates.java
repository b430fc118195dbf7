package pippinry.story.internal.check;

import java.util.Optional;
import java.util.function.Consumer;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** Nothing happens before it can: a plant does not end before it was made, no child is older than its parent. */
final class Dates implements Check {

    @Override
    public void look(Program program, Consumer<Finding> found) {
        program.table(Kinds.PLANTS).forEach(row -> plant(row.value()).ifPresent(found));
        program.table(Kinds.GENOTYPES).forEach(row -> genotype(program, row.value(), found));
        program.table(Kinds.SCORES)
                .forEach(row -> score(program, row.value(), row.id()).ifPresent(found));
    }

    private static boolean surelyBefore(Optional<PartialDate> one, Optional<PartialDate> other) {
        return one.isPresent()
                && other.isPresent()
                && one.get().latest().isBefore(other.get().earliest());
    }

    private static Optional<Finding> plant(Plant plant) {
        return surelyBefore(plant.endedOn(), plant.madeOn())
                ? Optional.of(Finding.fault(
                        "plants",
                        plant.tag().text(),
                        "ended_on",
                        plant.endedOn().orElseThrow(),
                        "it was made later, on " + plant.madeOn().orElseThrow()))
                : Optional.empty();
    }

    private static void genotype(Program program, Genotype child, Consumer<Finding> found) {
        child.seedParent().ifPresent(parent -> parent(program, child, parent, "seed_parent", found));
        if (child.pollenParent().candidates().size() == 1) {
            parent(program, child, child.pollenParent().candidates().get(0), "pollen_parent", found);
        }
    }

    private static void parent(
            Program program, Genotype child, Code<Genotype> code, String column, Consumer<Finding> found) {
        Optional<PartialDate> born = program.find(Kinds.GENOTYPES, code).flatMap(Genotype::year);
        if (surelyBefore(child.year(), born)) {
            found.accept(Finding.fault(
                    "genotypes",
                    child.code().text(),
                    column,
                    code,
                    "the child is of " + child.year().orElseThrow() + ", its parent of " + born.orElseThrow()));
        }
    }

    private static Optional<Finding> score(Program program, Score score, int id) {
        Optional<Plant> plant =
                program.find(Kinds.PLANTS, Code.of(score.subject().text()));
        boolean after = plant.filter(of -> score.sample().isEmpty() && surelyBefore(of.endedOn(), score.date()))
                .isPresent();
        return after
                ? Optional.of(Finding.question(
                        "scores",
                        "row " + id,
                        "date",
                        score.date().orElseThrow(),
                        score.subject() + " ended on " + plant.get().endedOn().orElseThrow()))
                : Optional.empty();
    }
}
