package pippinry.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * Hourly weather of a wet north-western hillside at 240 m, invented hour by hour: a yearly wave, days that hang together,
 * a daily wave that is flatter under cloud, rain in spells, and leaves that stay wet after it.
 */
final class Weather {

    /** One hour, as the logger writes it. */
    record Hour(LocalDateTime time, double temperature, int wetMinutes, double rain, int humidity) {}

    private static final Map<Integer, Double> SPRING = Map.ofEntries(
            Map.entry(2011, 0.7),
            Map.entry(2012, 0.0),
            Map.entry(2013, 0.3),
            Map.entry(2014, 0.5),
            Map.entry(2015, -0.3),
            Map.entry(2016, -0.2),
            Map.entry(2017, 0.5),
            Map.entry(2018, -0.4),
            Map.entry(2019, 0.6),
            Map.entry(2020, 0.5),
            Map.entry(2021, -0.1),
            Map.entry(2022, 0.3),
            Map.entry(2023, -0.2),
            Map.entry(2024, 0.2),
            Map.entry(2025, 0.6),
            Map.entry(2026, 0.1));
    private static final Map<Integer, Double> WETNESS =
            Map.of(2012, 1.35, 2013, 0.8, 2015, 1.1, 2018, 0.5, 2019, 1.1, 2022, 0.6, 2023, 1.2, 2024, 1.35, 2025, 0.7);
    private static final Map<LocalDate, Double> FROST = Map.of(
            LocalDate.of(2017, 5, 18), -3.1,
            LocalDate.of(2017, 5, 19), -2.2,
            LocalDate.of(2020, 5, 13), -2.3,
            LocalDate.of(2023, 5, 17), -1.4);
    private static final Set<Integer> LOGGER_MONTHS = Set.of(3, 4, 5, 6, 7);

    private final Map<LocalDate, Hour[]> days = new HashMap<>();

    Weather() {
        double anomaly = 0;
        int wetLeft = 0;
        for (LocalDate day = LocalDate.of(2011, 1, 1); day.getYear() < 2027; day = day.plusDays(1)) {
            Dice dice = Dice.of("weather", day);
            anomaly = 0.7 * anomaly + dice.normal(0, 1.7);
            wetLeft = fill(day, anomaly, wetLeft, dice);
        }
    }

    /** Fills one day and tells how many hours the leaves stay wet after it. */
    private int fill(LocalDate day, double anomaly, int wetBefore, Dice dice) {
        double wetness = WETNESS.getOrDefault(day.getYear(), 1.0);
        boolean wetDay = dice.chance(StrictMath.min(0.85, 0.52 * wetness));
        double mean = meanOf(day) + anomaly * (wetDay ? 0.7 : 1);
        double swing = swing(day) * (wetDay ? 0.45 : 1);
        Hour[] hours = new Hour[24];
        boolean raining = false;
        int wetLeft = wetBefore;
        for (int hour = 0; hour < 24; hour++) {
            raining = wetDay && dice.chance(raining ? 0.74 : 0.1);
            double wave = StrictMath.cos(2 * StrictMath.PI * (hour - 15) / 24);
            double temperature = frosted(day, hour, mean + swing * wave + dice.normal(0, 0.3));
            int humidity = humidity(wave, raining || wetLeft > 0, dice);
            wetLeft = raining ? dice.whole(1, humidity > 88 ? 6 : 3) : Math.max(0, wetLeft - 1);
            double rain = raining ? 0.2 * Math.round(-5 * 1.1 * StrictMath.log(1 - dice.between(0, 0.999))) : 0;
            hours[hour] = new Hour(
                    day.atTime(hour, 0), tenth(temperature), wet(raining, wetLeft, humidity, dice), rain, humidity);
        }
        days.put(day, hours);
        return wetLeft;
    }

    private static double meanOf(LocalDate day) {
        double wave = StrictMath.cos(2 * StrictMath.PI * (day.getDayOfYear() - 25) / 365.25);
        double spring =
                day.getMonthValue() >= 2 && day.getMonthValue() <= 5 ? SPRING.getOrDefault(day.getYear(), 0.0) : 0;
        return 8.7 - 6.0 * wave + spring;
    }

    private static double swing(LocalDate day) {
        double wave = StrictMath.cos(2 * StrictMath.PI * (day.getDayOfYear() - 15) / 365.25);
        return 3.6 - 1.8 * wave;
    }

    private static double frosted(LocalDate day, int hour, double temperature) {
        Double lowest = FROST.get(day);
        return lowest == null || hour > 9
                ? temperature
                : StrictMath.min(temperature, lowest + 0.9 * StrictMath.abs(hour - 5));
    }

    private static int humidity(double wave, boolean wet, Dice dice) {
        double value = 80 - 12 * wave + (wet ? 14 : 0) + dice.normal(0, 4);
        return (int) Math.round(StrictMath.max(35, StrictMath.min(100, value)));
    }

    private static int wet(boolean raining, int wetLeft, int humidity, Dice dice) {
        if (raining || wetLeft > 0) {
            return 60;
        }
        return humidity >= 95 ? 10 * dice.whole(2, 6) : 0;
    }

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }

    Hour[] day(LocalDate day) {
        return days.get(day);
    }

    double mean(LocalDate day) {
        double sum = 0;
        for (Hour hour : day(day)) {
            sum += hour.temperature();
        }
        return sum / 24;
    }

    double lowest(LocalDate day) {
        double lowest = 99;
        for (Hour hour : day(day)) {
            lowest = StrictMath.min(lowest, hour.temperature());
        }
        return lowest;
    }

    double rain(LocalDate day) {
        double sum = 0;
        for (Hour hour : day(day)) {
            sum += hour.rain();
        }
        return sum;
    }

    /** How a hand writes the weather at noon beside a visit. */
    String note(LocalDate day) {
        String sky = rain(day) < 0.1 ? "dry" : rain(day) < 3 ? "showers" : "rain";
        return Math.round(day(day)[13].temperature()) + " °C, " + sky;
    }

    /** Enters what the logger recorded on these days; in its first years it stood out from March to July only. */
    void enter(Book book, LocalDate from, LocalDate to, boolean allMonths) {
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            if (allMonths || LOGGER_MONTHS.contains(day.getMonthValue())) {
                for (Hour hour : day(day)) {
                    book.add(row(book, hour));
                }
            }
        }
    }

    private static Row row(Book book, Hour hour) {
        return book.row(Table.WEATHER)
                .with("time", hour.time())
                .with("temp_c", hour.temperature())
                .with("wet_min", hour.wetMinutes())
                .with("rain_mm", hour.rain())
                .with("rh_pct", hour.humidity());
    }
}
