package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.value.Code;

/** One tagged branch or cluster; a neutral tag has no cross until it is bound. */
public record Pollination(
        @Needed Code<Pollination> tag,
        Optional<Code<Cross>> cross,
        Optional<Code<Plant>> plant,
        Optional<PollinationKind> kind,
        OptionalInt flowers,
        OptionalInt setFruits,
        OptionalInt harvestedFruits,
        String lossCause,
        String note) {

    public Pollination {
        Checks.range("flowers", flowers, 0, 1_000_000);
        Checks.range("set_fruits", setFruits, 0, 1_000_000);
        Checks.range("harvested_fruits", harvestedFruits, 0, 1_000_000);
    }
}
