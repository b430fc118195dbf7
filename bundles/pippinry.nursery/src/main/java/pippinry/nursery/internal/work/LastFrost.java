package pippinry.nursery.internal.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pippinry.model.Program;
import pippinry.model.record.Event;
import pippinry.model.record.Kinds;
import pippinry.model.record.WeatherHour;

/**
 * When frost is over here: the day after which no hour of nine springs in ten was at or below 0 °C, by the program's own
 * weather and frost events. The quantile is the nearest rank. Half a year before midsummer is read; a spring counts when
 * it has any hour or event on file.
 */
public final class LastFrost {

    private static final int MIDSUMMER_MONTH = 7;
    private static final int LEAST_SPRINGS = 3;
    private static final double SHARE = 0.9;

    /** Cross years with weather, each with its last frost as days after New Year of the season; 0 if it had none. */
    private final Map<Integer, Integer> springs;

    private final Hemisphere hemisphere;

    private LastFrost(Map<Integer, Integer> springs, Hemisphere hemisphere) {
        this.springs = springs;
        this.hemisphere = hemisphere;
    }

    public static LastFrost of(Program program) {
        return program.derived(LastFrost.class, LastFrost::read);
    }

    /** Empty until three springs are on file. */
    public Optional<LocalDate> expected(int crossYear) {
        if (springs.size() < LEAST_SPRINGS) {
            return Optional.empty();
        }
        List<Integer> days = new ArrayList<>(springs.values());
        Collections.sort(days);
        int rank = (int) Math.ceil(SHARE * days.size());
        return Optional.of(hemisphere.day(crossYear, 1, 1).plusDays(days.get(rank - 1)));
    }

    /** How many springs it rests on. */
    public int springs() {
        return springs.size();
    }

    private static LastFrost read(Program program) {
        LastFrost frost = new LastFrost(new TreeMap<>(), Hemisphere.of(program));
        program.table(Kinds.WEATHER).forEach(row -> frost.add(row.value()));
        program.table(Kinds.EVENTS).stream()
                .filter(LastFrost::isFrost)
                .forEach(event -> event.date().day().ifPresent(day -> frost.add(day, true)));
        return frost;
    }

    private static boolean isFrost(Event event) {
        return event.kind().equals("frost");
    }

    private void add(WeatherHour hour) {
        if (hour.tempC().isPresent()) {
            hour.time().day().ifPresent(day -> add(day, hour.tempC().getAsDouble() <= 0));
        }
    }

    private void add(LocalDate day, boolean freezes) {
        int year = hemisphere.crossYear(day);
        LocalDate newYear = hemisphere.day(year, 1, 1);
        if (day.isBefore(hemisphere.day(year, MIDSUMMER_MONTH, 1))) {
            int after = freezes ? (int) (day.toEpochDay() - newYear.toEpochDay()) : 0;
            springs.merge(year, after, Math::max);
        }
    }
}
