package pippinry.traits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.record.Direction;

/**
 * What is scored, how and when.
 *
 * @param states named notes or states in their order; empty for a measured number
 * @param low hard limits of the value
 * @param plausibleLow outside these limits entry asks back
 * @param unit empty for notes and states
 * @param direction what is usually wanted; empty when neither is better
 * @param target what is wanted with direction near
 * @param subject on what it is scored: plant, genotype, sample
 * @param standard the descriptor list it follows, with its number there; empty for one of ours
 */
public record TraitDefinition(
        String code,
        String name,
        TraitScale scale,
        List<TraitState> states,
        OptionalDouble low,
        OptionalDouble high,
        OptionalDouble plausibleLow,
        OptionalDouble plausibleHigh,
        String unit,
        Optional<Direction> direction,
        OptionalDouble target,
        String subject,
        String when,
        String how,
        String standard,
        Provenance provenance,
        String note) {

    public TraitDefinition {
        states = List.copyOf(states);
        if (low.isPresent() && high.isPresent() && low.getAsDouble() >= high.getAsDouble()) {
            throw new IllegalArgumentException("low below high");
        }
        if (direction.equals(Optional.of(Direction.NEAR)) && target.isEmpty()) {
            throw new IllegalArgumentException("a target, since the direction is near");
        }
    }

    /** Whether the trait can have this number as its value. */
    public boolean allows(double value) {
        return !(value < low.orElse(Double.NEGATIVE_INFINITY)) && !(value > high.orElse(Double.POSITIVE_INFINITY));
    }

    /** Whether entry may take the number without asking back. */
    public boolean plausible(double value) {
        return allows(value)
                && !(value < plausibleLow.orElse(Double.NEGATIVE_INFINITY))
                && !(value > plausibleHigh.orElse(Double.POSITIVE_INFINITY));
    }
}
