package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import pippinry.model.record.Chilling;

/**
 * A stretch of cold as it counts for one lot.
 *
 * @param end the day it came out, or the day up to which is counted
 * @param open whether it is still in
 */
record Spell(Chilling record, LocalDate start, LocalDate end, boolean open) {

    long days() {
        return Math.max(0, ChronoUnit.DAYS.between(start, end));
    }

    boolean isOutdoors() {
        return record.how().toLowerCase(java.util.Locale.ROOT).contains("outdoor");
    }
}
