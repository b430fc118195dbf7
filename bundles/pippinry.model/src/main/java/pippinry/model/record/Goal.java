package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalDouble;

/** What the program is for: a trait that must reach a threshold, or one that is wished for, with its weight. */
public record Goal(
        @Needed String trait,
        Optional<GoalKind> kind,
        Optional<Direction> direction,
        OptionalDouble threshold,
        OptionalDouble weight,
        String note) {}
