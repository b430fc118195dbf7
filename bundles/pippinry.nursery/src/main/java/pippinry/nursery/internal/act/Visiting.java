package pippinry.nursery.internal.act;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.number.NearestNumbers;
import pippinry.model.number.Reading;
import pippinry.model.record.Cross;
import pippinry.model.record.Done;
import pippinry.model.record.Kinds;
import pippinry.model.record.Loss;
import pippinry.model.record.PollenLot;
import pippinry.model.record.Pollination;
import pippinry.model.record.PollinationKind;
import pippinry.model.record.Visit;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.Subject;

/**
 * One visit to a tagged branch, as it is called out beside the tree. The branch keeps its flowers, its fruits set and its
 * fruits picked; what was lost is kept with its cause: {@code lost} with a count is so many flowers or fruits, without one it
 * is the branch itself.
 *
 * @param tag as typed, with or without its check
 * @param time day, with the minute where it is known
 * @param cause only of a loss
 */
public record Visiting(
        String tag,
        Done did,
        OptionalInt count,
        Optional<Code<PollenLot>> pollen,
        PartialDate time,
        String hand,
        String weather,
        String cause) {

    private static final int SHOWN = 3;

    public Visiting {
        if (did == Done.LOST && cause.isBlank()) {
            throw new IllegalArgumentException("Why was it lost? Give a cause, such as frost, wind or pigeons");
        }
        if (did != Done.POLLINATED && pollen.isPresent()) {
            throw new IllegalArgumentException("Pollen goes with pollinated only, not with " + did.word());
        }
    }

    public Edit in(Program program, String author) throws NotPossible {
        Pollination branch = branch(program);
        requireSense(program, branch);
        Edit.Draft edit = Edit.by(author, branch.tag() + " " + did.word());
        boolean inPart = did == Done.LOST && count.isPresent();
        if (!inPart) {
            edit.put(
                    Kinds.VISITS,
                    new Visit(branch.tag(), Optional.of(time), Optional.of(did), count, pollen, hand, weather, ""));
        }
        if (did == Done.LOST) {
            edit.put(
                    Kinds.LOSSES,
                    new Loss(Subject.of(branch.tag()), Optional.of(time), inPart ? count : left(branch), cause, ""));
        }
        Pollination after = after(branch, inPart);
        if (!after.equals(branch)) {
            edit.put(Kinds.POLLINATIONS, after);
        }
        return edit.done();
    }

    private Pollination branch(Program program) throws NotPossible {
        Reading typed = Reading.of(tag);
        Optional<Pollination> found = typed.isValid()
                ? program.find(Kinds.POLLINATIONS, Code.<Pollination>of(typed.number()))
                : Optional.empty();
        if (found.isPresent()) {
            return found.get();
        }
        List<String> near = NearestNumbers.of(
                typed,
                program.table(Kinds.POLLINATIONS).stream()
                        .map(branch -> branch.tag().text()),
                SHOWN);
        throw new NotPossible((typed.isValid() ? "There is no tag " + tag + " on file" : tag + ": the check is wrong")
                + (near.isEmpty() ? "" : "; nearest are " + String.join(", ", near)));
    }

    private void requireSense(Program program, Pollination branch) throws NotPossible {
        if (did == Done.POLLINATED && branch.kind().equals(Optional.of(PollinationKind.CONTROL_NO_POLLEN))) {
            throw new NotPossible(branch.tag() + " is a control bag: it gets no pollen");
        }
        requirePollenOfCross(program, branch);
        requireNotMore("fruits set", did == Done.SET, branch.flowers(), "flowers");
        requireNotMore("fruits", did == Done.JUNE, branch.setFruits(), "fruits set");
        requireNotMore("fruits picked", did == Done.HARVEST, branch.setFruits(), "fruits set");
    }

    private void requireNotMore(String what, boolean counted, OptionalInt most, String of) throws NotPossible {
        if (counted && count.isPresent() && most.isPresent() && count.getAsInt() > most.getAsInt()) {
            throw new NotPossible(count.getAsInt() + " " + what + " of " + most.getAsInt() + " " + of
                    + " cannot be: count again, or look whether it is the right tag");
        }
    }

    private void requirePollenOfCross(Program program, Pollination branch) throws NotPossible {
        if (pollen.isEmpty()) {
            return;
        }
        PollenLot lot = program.find(Kinds.POLLEN, pollen.get())
                .orElseThrow(() -> new NotPossible("There is no pollen lot " + pollen.get() + " on file"));
        Optional<Cross> cross = branch.cross().flatMap(code -> program.find(Kinds.CROSSES, code));
        boolean fits = lot.genotype().isEmpty()
                || cross.isEmpty()
                || cross.get().pollenParent().candidates().isEmpty()
                || cross.get()
                        .pollenParent()
                        .candidates()
                        .contains(lot.genotype().get());
        if (!fits) {
            throw new NotPossible(
                    "Pollen lot " + lot.lot() + " is of " + lot.genotype().get() + ", but "
                            + cross.get().code() + " is pollinated with "
                            + cross.get().pollenParent());
        }
    }

    /** Fruits where they were counted, else flowers. */
    private static OptionalInt left(Pollination branch) {
        return branch.setFruits().isPresent() ? branch.setFruits() : branch.flowers();
    }

    private Pollination after(Pollination branch, boolean inPart) {
        boolean flowersNow = branch.flowers().isEmpty() && (did == Done.POLLINATED || did == Done.EMASCULATED);
        return new Pollination(
                branch.tag(),
                branch.cross(),
                branch.plant(),
                branch.kind(),
                flowersNow ? count : branch.flowers(),
                did == Done.SET && count.isPresent() ? count : branch.setFruits(),
                did == Done.HARVEST && count.isPresent() ? count : branch.harvestedFruits(),
                did == Done.LOST && !inPart ? cause : branch.lossCause(),
                branch.note());
    }
}
