package pippinry.nursery.internal.work;

import java.time.LocalDate;
import pippinry.model.Program;
import pippinry.model.value.Decimal;

/** On which half of the globe the land lies: the same work comes half a year later in the south. */
public enum Hemisphere {
    NORTH(0),
    SOUTH(6);

    private final int later;

    Hemisphere(int later) {
        this.later = later;
    }

    /** By the setting {@code hemisphere}, else by the sign of {@code latitude}; north if neither is set. */
    public static Hemisphere of(Program program) {
        return program.setting("hemisphere")
                .map(word -> word.equalsIgnoreCase("south") ? SOUTH : NORTH)
                .or(() -> program.setting("latitude").map(Hemisphere::byLatitude))
                .orElse(NORTH);
    }

    private static Hemisphere byLatitude(String latitude) {
        return Decimal.read(latitude) < 0 ? SOUTH : NORTH;
    }

    /**
     * The day of the season of a year's crosses.
     *
     * @param crossYear in which the flowers open
     * @param month as it would be in the north
     */
    public LocalDate day(int crossYear, int month, int day) {
        return LocalDate.of(crossYear, month, day).plusMonths(later);
    }

    /** The year of crosses to which the day belongs, from New Year in the north, from the first of July in the south. */
    public int crossYear(LocalDate day) {
        return day.minusMonths(later).getYear();
    }
}
