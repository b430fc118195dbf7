package pippinry.traits;

import java.util.OptionalDouble;

/**
 * A rate as it is published, to stand in until there are own counts.
 *
 * @param name such as {@code set} or {@code emergence}
 * @param values how many single values the range spans; 1 for a single value or a band from practice
 * @param unit {@code share} from 0 to 1, or what is counted
 */
public record PublishedRate(
        String name,
        String what,
        OptionalDouble low,
        double typical,
        OptionalDouble high,
        int values,
        String unit,
        Provenance provenance,
        String note) {

    public PublishedRate {
        if (low.isPresent() && low.getAsDouble() > typical || high.isPresent() && high.getAsDouble() < typical) {
            throw new IllegalArgumentException("low, typical and high in this order");
        }
        if (values < 1) {
            throw new IllegalArgumentException("one value or more behind the range");
        }
    }
}
