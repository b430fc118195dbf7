package pippinry.nursery.internal.act;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Cross;
import pippinry.model.record.Done;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.PollenLot;
import pippinry.model.record.Pollination;
import pippinry.model.record.PollinationKind;
import pippinry.model.record.Visit;
import pippinry.model.value.Code;

/**
 * A neutral tag that was hung in the morning is bound in the evening to its cross, tree and pollen lot. What was noted under
 * it stays; passes without a pollen lot get it.
 *
 * @param flowers how many; empty leaves what is on file
 */
public record Binding(
        Code<Pollination> tag,
        Code<Cross> cross,
        Optional<Code<Plant>> plant,
        Optional<Code<PollenLot>> pollen,
        OptionalInt flowers) {

    public Edit in(Program program, String author) throws NotPossible {
        Pollination hung = program.find(Kinds.POLLINATIONS, tag)
                .orElseThrow(() -> new NotPossible("There is no tag " + tag + " on file"));
        if (hung.cross().filter(other -> !other.equals(cross)).isPresent()) {
            throw new NotPossible(
                    tag + " is bound to " + hung.cross().get() + " already; take that edit back if it is wrong");
        }
        requirePollenOfCross(program);
        Edit.Draft edit = Edit.by(author, "tag " + tag + " is of " + cross);
        edit.put(Kinds.POLLINATIONS, bound(hung));
        pollen.ifPresent(lot -> program.table(Kinds.VISITS).citing(tag.text()).stream()
                .filter(row -> isPassWithoutPollen(row.value()))
                .forEach(row -> edit.replace(Kinds.VISITS, row.id(), withPollen(row, lot))));
        return edit.done();
    }

    /** Pollen of another genotype than the cross's pollen parent is a slip of the pen, or another cross. */
    private void requirePollenOfCross(Program program) throws NotPossible {
        Cross wanted = program.find(Kinds.CROSSES, cross)
                .orElseThrow(() -> new NotPossible("There is no cross " + cross + " on file"));
        if (pollen.isEmpty()) {
            return;
        }
        PollenLot lot = program.find(Kinds.POLLEN, pollen.get())
                .orElseThrow(() -> new NotPossible("There is no pollen lot " + pollen.get() + " on file"));
        boolean fits = lot.genotype().isEmpty()
                || wanted.pollenParent().candidates().isEmpty()
                || wanted.pollenParent().candidates().contains(lot.genotype().get());
        if (!fits) {
            throw new NotPossible("Pollen lot " + lot.lot() + " is of "
                    + lot.genotype().get() + ", but " + cross + " is pollinated with " + wanted.pollenParent());
        }
    }

    private Pollination bound(Pollination hung) {
        return new Pollination(
                tag,
                Optional.of(cross),
                plant.or(hung::plant),
                hung.kind().or(() -> Optional.of(PollinationKind.HAND)),
                flowers.isPresent() ? flowers : hung.flowers(),
                hung.setFruits(),
                hung.harvestedFruits(),
                hung.lossCause(),
                hung.note());
    }

    private boolean isPassWithoutPollen(Visit visit) {
        return visit.pollination().equals(tag)
                && visit.did().equals(Optional.of(Done.POLLINATED))
                && visit.pollenLot().isEmpty();
    }

    private static Visit withPollen(Row<Visit> row, Code<PollenLot> lot) {
        Visit visit = row.value();
        return new Visit(
                visit.pollination(),
                visit.time(),
                visit.did(),
                visit.count(),
                Optional.of(lot),
                visit.hand(),
                visit.weather(),
                visit.note());
    }
}
