package pippinry.nursery.internal.start;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.Edit;
import pippinry.model.NextNumbers;
import pippinry.model.Program;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.SeedLot;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;

/**
 * Puts seed on file that is there without a pollination of ours.
 *
 * @param mother name or number, empty if unknown
 * @param source where it came from, such as {@code own tree, open pollinated} or {@code bought apple}
 * @param harvested when the fruit was picked or bought
 * @param seeds how many full ones
 * @param kept how it is kept now, such as {@code dry} or {@code in the fruit}
 */
public record SeedOnHand(String mother, String source, PartialDate harvested, int seeds, String kept) {

    public SeedOnHand {
        if (seeds < 1) {
            throw new IllegalArgumentException("How many seeds? A number from 1");
        }
    }

    /**
     * What it came to.
     *
     * @param edit to apply
     * @param lot number of the seed lot, such as {@code L26-001}
     */
    public record Plan(Edit edit, String lot) {}

    public Plan in(Program program, String author) {
        String family = new NextNumbers(program).cross(harvested.year().getValue());
        String lot = "L" + family;
        Edit.Draft edit = Edit.by(author, seeds + " seeds on hand, " + lot);
        Optional<Code<Genotype>> parent = new Mother(program).in(edit, mother, source);
        edit.put(
                Kinds.CROSSES,
                new Cross(
                        Code.of(family),
                        Optional.of(PartialDate.parse(harvested.year().toString())),
                        parent,
                        PollenParent.parse("op"),
                        source,
                        OptionalInt.empty(),
                        ""));
        edit.put(
                Kinds.SEEDLOTS,
                new SeedLot(
                        Code.of(lot),
                        Optional.of(Code.of(family)),
                        source,
                        Optional.of(harvested),
                        OptionalInt.empty(),
                        OptionalInt.of(seeds),
                        OptionalInt.empty(),
                        kept,
                        Optional.empty(),
                        OptionalInt.empty(),
                        OptionalInt.empty(),
                        OptionalInt.empty(),
                        ""));
        return new Plan(edit.done(), lot);
    }
}
