package pippinry.crossing.internal.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.crossing.internal.Words;
import pippinry.crossing.internal.allocate.PlanOfCrosses;
import pippinry.model.Change;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.NextNumbers;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.record.PollinationKind;
import pippinry.model.value.Code;

/** Writes a whole plan down as one edit: crosses with their numbers, and the tags of the branches to pollinate. */
public final class MakePlan {

    /** Flowers on one tagged branch (common practice, no source). */
    private static final int FLOWERS_A_TAG = 15;

    private MakePlan() {}

    /**
     * What it comes to.
     *
     * @param numbers of the crosses, in the order of the plan
     * @param tags given out for their branches
     */
    public record Made(Edit edit, List<String> numbers, int tags) {}

    public static Made of(Program program, PlanOfCrosses plan, LocalDate today, String author) throws EditRefused {
        List<Change<?>> changes = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        int tags = 0;
        Program after = program;
        for (PlanOfCrosses.Planned cross : plan.crosses()) {
            MakeCross.Plan made = MakeCross.of(
                    after,
                    cross.pair().seedParent(),
                    cross.pair().pollenParent(),
                    OptionalInt.of(cross.seedlings()),
                    Words.say("%d flowers for %d seedlings, by plan", cross.flowers(), cross.seedlings()),
                    today,
                    author);
            after = after.apply(made.edit(), Instant.EPOCH).program();
            Edit branches = branches(after, made.number(), cross.flowers(), author);
            tags += (int) branches.changes().stream()
                    .filter(change -> change.kind() == Kinds.POLLINATIONS)
                    .count();
            after = after.apply(branches, Instant.EPOCH).program();
            changes.addAll(made.edit().changes());
            changes.addAll(branches.changes());
            numbers.add(made.number());
        }
        return new Made(new Edit(author, "plan of " + numbers.size() + " crosses", changes), numbers, tags);
    }

    private static Edit branches(Program program, String cross, int flowers, String author) {
        int count = Math.max(1, (int) Math.ceil((double) flowers / FLOWERS_A_TAG));
        NextNumbers.Given given = new NextNumbers(program).pollinations(cross, count);
        Edit.Draft draft = given.markSkipped(Edit.by(author, "tags of " + cross));
        given.numbers().forEach(number -> draft.put(Kinds.POLLINATIONS, branch(number, cross)));
        return draft.done();
    }

    private static Pollination branch(String number, String cross) {
        return new Pollination(
                Code.of(number),
                Optional.of(Code.of(cross)),
                Optional.empty(),
                Optional.of(PollinationKind.HAND),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                "",
                "");
    }
}
