package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** Seeds, with or without a pollination of ours, from fruit to pot. */
public record SeedLot(
        @Needed Code<SeedLot> code,
        Optional<Code<Cross>> cross,
        String source,
        Optional<PartialDate> harvestedOn,
        OptionalInt fruits,
        OptionalInt seedsFull,
        OptionalInt seedsEmpty,
        String kept,
        Optional<PartialDate> sownOn,
        OptionalInt sown,
        OptionalInt emerged,
        OptionalInt potted,
        String note) {

    public SeedLot {
        Checks.range("fruits", fruits, 0, 10_000_000);
        Checks.range("seeds_full", seedsFull, 0, 10_000_000);
        Checks.range("seeds_empty", seedsEmpty, 0, 10_000_000);
        Checks.range("sown", sown, 0, 10_000_000);
        Checks.range("emerged", emerged, 0, 10_000_000);
        Checks.range("potted", potted, 0, 10_000_000);
    }
}
