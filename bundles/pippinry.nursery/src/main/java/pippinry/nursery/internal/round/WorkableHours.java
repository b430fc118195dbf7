package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.WeatherHour;

/**
 * How many hours a day of bloom can be worked here, by the program's own weather: from 8 to 19 o'clock, dry, and at least
 * 12 °C, below which most pollen does not germinate (NIAB, applegrowing.niab.com 2022-05-12; hours of the day common
 * practice, no source).
 */
public final class WorkableHours {

    private static final LocalTime MORNING = LocalTime.of(8, 0);
    private static final LocalTime EVENING = LocalTime.of(19, 0);
    private static final double LEAST_TEMPERATURE = 12;
    private static final double WET_MINUTES = 30;
    private static final int WHOLE_DAY = 20;

    /** Hours on file and workable hours of a day. */
    private record Day(int hours, int workable) {}

    private final Map<LocalDate, Day> days = new HashMap<>();

    private WorkableHours() {}

    public static WorkableHours of(Program program) {
        return program.derived(WorkableHours.class, WorkableHours::read);
    }

    /** Mean over the days around that day of the year, in all years with weather; empty without weather. */
    public OptionalDouble around(LocalDate bloom, int daysAround) {
        return days.entrySet().stream()
                .filter(day -> isAround(day.getKey(), bloom, daysAround)
                        && day.getValue().hours() >= WHOLE_DAY)
                .mapToInt(day -> day.getValue().workable())
                .average();
    }

    private static boolean isAround(LocalDate day, LocalDate bloom, int daysAround) {
        return IntStream.rangeClosed(-1, 1)
                .mapToObj(years -> bloom.withYear(day.getYear() + years))
                .anyMatch(there -> Math.abs(day.toEpochDay() - there.toEpochDay()) <= daysAround);
    }

    private static WorkableHours read(Program program) {
        WorkableHours hours = new WorkableHours();
        program.table(Kinds.WEATHER).forEach(row -> hours.add(row.value()));
        return hours;
    }

    private void add(WeatherHour hour) {
        if (hour.time().day().isPresent() && hour.time().time().isPresent()) {
            int workable = isWorkable(hour) ? 1 : 0;
            days.merge(
                    hour.time().day().get(),
                    new Day(1, workable),
                    (one, other) -> new Day(one.hours() + other.hours(), one.workable() + other.workable()));
        }
    }

    private static boolean isWorkable(WeatherHour hour) {
        LocalTime time = hour.time().time().orElseThrow();
        return !time.isBefore(MORNING)
                && time.isBefore(EVENING)
                && hour.tempC().orElse(0) >= LEAST_TEMPERATURE
                && hour.wetMin().orElse(0) < WET_MINUTES
                && hour.rainMm().orElse(0) == 0;
    }
}
