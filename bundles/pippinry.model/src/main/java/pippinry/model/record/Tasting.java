package pippinry.model.record;

import java.util.OptionalInt;

/** One choice of a judge between two samples at a tasting. */
public record Tasting(
        @Needed String session, String judge, OptionalInt order, String winner, String loser, String note) {}
