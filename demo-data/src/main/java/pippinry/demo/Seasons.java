package pippinry.demo;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/** What the weather of a year did: when a middling tree bloomed, how hard scab pressed, which nights froze. */
final class Seasons {

    /** Degree days above 4.5 °C from 1 February until a middling tree is in full bloom here (set so that this is in May). */
    private static final double UNTIL_FULL_BLOOM = 236;

    private final Weather weather;
    private final Map<Integer, Double> pressure = new HashMap<>();

    Seasons(Weather weather) {
        this.weather = weather;
    }

    /** Full bloom of a tree with bloom value 0. */
    LocalDate fullBloom(int year) {
        double sum = 0;
        LocalDate day = LocalDate.of(year, 2, 1);
        while (sum < UNTIL_FULL_BLOOM) {
            sum += StrictMath.max(0, weather.mean(day) - 4.5);
            day = day.plusDays(1);
        }
        return day;
    }

    /** Day a genotype reaches a BBCH stage of bloom: 57 pink bud, 59 balloon, 61, 65 full bloom, 69 petals down. */
    LocalDate stage(Genotype genotype, int year, int bbch) {
        double own =
                genotype.worth(Trait.BLOOM) + Dice.of("bloom", genotype, year).normal(0, 0.7);
        int step =
                switch (bbch) {
                    case 57 -> -8;
                    case 59 -> -5;
                    case 61 -> -3;
                    case 65 -> 0;
                    case 67 -> 4;
                    case 69 -> 8;
                    default -> throw new IllegalArgumentException("stage " + bbch);
                };
        return fullBloom(year).plusDays(Math.round(own) + step);
    }

    /** Scab pressure against a middling year, in points of the 1-9 scale. */
    double scabPressure(int year) {
        return pressure.computeIfAbsent(year, this::reckonPressure);
    }

    private double reckonPressure(int year) {
        int spells = 0;
        int run = 0;
        for (LocalDate day = LocalDate.of(year, 4, 20); day.getMonthValue() < 8; day = day.plusDays(1)) {
            for (Weather.Hour hour : weather.day(day)) {
                run = hour.wetMinutes() >= 30 && hour.temperature() >= 6 ? run + 1 : 0;
                spells += run == 10 ? 1 : 0;
            }
        }
        return StrictMath.max(-2.5, StrictMath.min(1.5, (spells - 17) / 5.0));
    }

    /** Lowest temperature in the week around full bloom; below -2 °C open flowers are harmed. */
    double lowestInBloom(Genotype genotype, int year) {
        double lowest = 99;
        LocalDate bloom = stage(genotype, year, 65);
        for (int day = -5; day <= 6; day++) {
            lowest = StrictMath.min(lowest, weather.lowest(bloom.plusDays(day)));
        }
        return lowest;
    }

    Weather weather() {
        return weather;
    }
}
