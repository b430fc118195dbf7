package pippinry.nursery.internal.account;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pippinry.model.record.Cross;

/**
 * What became of a cross, station by station, as far as it was counted.
 *
 * @param counts a station that nobody counted is not there, which is not the same as none
 */
public record FamilyAccount(Cross cross, Map<Step, Count> counts) {

    /**
     * A count at a station.
     *
     * @param whole whether every branch or lot was counted; else there were at least so many
     */
    public record Count(int number, boolean whole) {

        @Override
        public String toString() {
            return whole ? Integer.toString(number) : "≥ " + number;
        }
    }

    public FamilyAccount {
        counts = Map.copyOf(counts);
    }

    public Optional<Count> count(Step step) {
        return Optional.ofNullable(counts.get(step));
    }

    /** Empty unless it was counted whole. */
    OptionalInt number(Step step) {
        Count count = counts.get(step);
        return count == null || !count.whole() ? OptionalInt.empty() : OptionalInt.of(count.number());
    }

    /** What was left of the station before, or came of it for each fruit; empty unless both were counted whole. */
    public OptionalDouble share(Step step) {
        if (step.ordinal() == 0) {
            return OptionalDouble.empty();
        }
        OptionalInt before = number(Step.values()[step.ordinal() - 1]);
        OptionalInt here = number(step);
        return before.isPresent() && here.isPresent() && before.getAsInt() > 0
                ? OptionalDouble.of((double) here.getAsInt() / before.getAsInt())
                : OptionalDouble.empty();
    }

    /** Whether anything was counted at all. */
    public boolean isEmpty() {
        return counts.isEmpty();
    }

    /** All of these together; a share of the sum counts only crosses that counted both of its stations. */
    static Map<Step, Double> usualShares(List<FamilyAccount> accounts) {
        Map<Step, Double> usual = new EnumMap<>(Step.class);
        for (Step step : Step.values()) {
            List<FamilyAccount> both = accounts.stream()
                    .filter(account -> account.share(step).isPresent())
                    .toList();
            double here = both.stream()
                    .mapToInt(account -> account.number(step).getAsInt())
                    .sum();
            double before = both.stream()
                    .mapToInt(account ->
                            account.number(Step.values()[step.ordinal() - 1]).getAsInt())
                    .sum();
            if (before > 0) {
                usual.put(step, here / before);
            }
        }
        return usual;
    }

    /**
     * The station where this cross fell furthest behind what is usual here, in proportion. Who lives is left out: older
     * families have been chosen from.
     *
     * @param usual shares of all crosses of the program
     * @param behind how far behind is worth telling, such as 0.8
     */
    Optional<Step> worst(Map<Step, Double> usual, double behind) {
        Optional<Step> worst = Optional.empty();
        double least = behind;
        for (Step step : Step.values()) {
            OptionalDouble share = share(step);
            if (step != Step.LIVING && share.isPresent() && usual.getOrDefault(step, 0.0) > 0) {
                double relative = share.getAsDouble() / usual.get(step);
                if (relative < least) {
                    least = relative;
                    worst = Optional.of(step);
                }
            }
        }
        return worst;
    }
}
