package pippinry.story.internal.check;

import java.util.OptionalInt;
import java.util.function.Consumer;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.record.Sample;
import pippinry.model.record.SeedLot;

/** No step from flower to tree has more than the one before it, and no more fruit is used than was picked. */
final class Counts implements Check {

    @Override
    public void look(Program program, Consumer<Finding> found) {
        program.table(Kinds.POLLINATIONS).forEach(row -> pollination(row.value(), found));
        program.table(Kinds.SEEDLOTS).forEach(row -> lot(row.value(), found));
        program.table(Kinds.SAMPLES).forEach(row -> sample(program, row.value(), found));
    }

    private static void pollination(Pollination branch, Consumer<Finding> found) {
        Steps steps = new Steps("pollinations", branch.tag().text(), found);
        steps.notMore("set_fruits", branch.setFruits(), "flowers", branch.flowers());
        steps.notMore("harvested_fruits", branch.harvestedFruits(), "set_fruits", branch.setFruits());
    }

    private static void lot(SeedLot lot, Consumer<Finding> found) {
        Steps steps = new Steps("seedlots", lot.code().text(), found);
        steps.notMore("emerged", lot.emerged(), "sown", lot.sown());
        steps.notMore("potted", lot.potted(), "emerged", lot.emerged());
    }

    private static void sample(Program program, Sample sample, Consumer<Finding> found) {
        Steps steps = new Steps("samples", sample.sample().text(), found);
        OptionalInt used = OptionalInt.of(sample.tasted().orElse(0)
                + sample.pressed().orElse(0)
                + sample.stored().orElse(0));
        steps.notMore("tasted, pressed and stored", used, "fruits", sample.fruits());
        int out = program.table(Kinds.TAKEOUTS).citing(sample.sample().text()).stream()
                .mapToInt(row -> row.value().fruits().orElse(0))
                .sum();
        steps.notMore("fruits taken out", OptionalInt.of(out), "stored", sample.stored());
    }

    /** Compares counts of one record. */
    private record Steps(String table, String key, Consumer<Finding> found) {

        void notMore(String column, OptionalInt count, String ofColumn, OptionalInt of) {
            if (count.isPresent() && of.isPresent() && count.getAsInt() > of.getAsInt()) {
                found.accept(Finding.question(
                        table,
                        key,
                        column,
                        count.getAsInt(),
                        "this is more than " + of.getAsInt() + " in " + ofColumn));
            }
        }
    }
}
