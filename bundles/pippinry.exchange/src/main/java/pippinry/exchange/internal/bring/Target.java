package pippinry.exchange.internal.bring;

import java.util.Optional;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/**
 * Where a column of a list goes.
 *
 * @param kind the table
 * @param column its column; for a score it is the value
 * @param trait the trait that is scored; empty unless it is a score
 */
public record Target(Kind<?> kind, Column column, Optional<String> trait) {

    private static final String SCORE = "score:";

    /** As {@code genotypes.seed_parent}, {@code seed_parent} of the table that is meant, or {@code score:brix}. */
    static Optional<Target> of(String field, Kind<?> meant) {
        if (field.startsWith(SCORE) && field.length() > SCORE.length()) {
            return Optional.of(new Target(
                    Kinds.SCORES,
                    Kinds.SCORES.column("value").orElseThrow(),
                    Optional.of(field.substring(SCORE.length()).strip())));
        }
        int dot = field.indexOf('.');
        Optional<Kind<?>> kind = dot < 0 ? Optional.of(meant) : Kinds.named(field.substring(0, dot));
        return kind.flatMap(table ->
                table.column(field.substring(dot + 1)).map(column -> new Target(table, column, Optional.empty())));
    }

    @Override
    public String toString() {
        return trait.map(code -> SCORE + code).orElse(kind + "." + column);
    }
}
