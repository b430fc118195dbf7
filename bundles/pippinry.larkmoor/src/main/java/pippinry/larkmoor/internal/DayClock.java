package pippinry.larkmoor.internal;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

/** A clock that stands on the evening of the day whose work is entered, and ticks a second at each look. */
final class DayClock extends Clock {

    private static final LocalTime EVENING = LocalTime.of(20, 0);

    private final ZoneId zone;
    private Instant now = Instant.EPOCH;

    DayClock(ZoneId zone) {
        this.zone = zone;
    }

    /** Several sittings on one day follow each other; time never runs backwards. */
    void setTo(LocalDate day) {
        Instant evening = day.atTime(EVENING).atZone(zone).toInstant();
        now = evening.isAfter(now) ? evening : now;
    }

    @Override
    public Instant instant() {
        now = now.plusSeconds(1);
        return now;
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        DayClock clock = new DayClock(other);
        clock.now = now;
        return clock;
    }
}
