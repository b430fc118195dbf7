package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.WeatherHour;
import pippinry.nursery.internal.work.Look;

/**
 * Days of cold outdoors by the program's own weather: the share of each day's hours between the limits (from memory, not
 * looked up). A day without weather counts whole, as the calendar runs.
 */
final class ColdOutdoors {

    /** Hours of a day that are on file, and how many of them were cold enough. */
    private record Day(int hours, int cold) {}

    private final Map<LocalDate, Day> days = new HashMap<>();

    private ColdOutdoors() {}

    static double days(Look look, LocalDate start, LocalDate end) {
        double low = look.term("chilling-low").typical();
        double high = look.term("chilling-high").typical();
        ColdOutdoors cold = look.program().derived(ColdOutdoors.class, program -> read(program, low, high));
        return start.datesUntil(end).mapToDouble(cold::share).sum();
    }

    private double share(LocalDate day) {
        Day known = days.get(day);
        return known == null ? 1 : (double) known.cold() / known.hours();
    }

    private static ColdOutdoors read(Program program, double low, double high) {
        ColdOutdoors cold = new ColdOutdoors();
        program.table(Kinds.WEATHER).forEach(row -> cold.add(row.value(), low, high));
        return cold;
    }

    private void add(WeatherHour hour, double low, double high) {
        if (hour.tempC().isPresent()) {
            double temperature = hour.tempC().getAsDouble();
            int cold = temperature >= low && temperature <= high ? 1 : 0;
            hour.time()
                    .day()
                    .ifPresent(day -> days.merge(
                            day,
                            new Day(1, cold),
                            (one, other) -> new Day(one.hours() + other.hours(), one.cold() + other.cold())));
        }
    }
}
