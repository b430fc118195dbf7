package pippinry.demo;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What has been seen of one seedling so far, as far as it bears on the choice. */
final class Impression {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

    private final List<Integer> liking = new ArrayList<>();
    private int worstScab = 1;
    private int weeksInStore;
    private int ripe;
    private int years;
    private String decision = "";

    void taste(int liked) {
        liking.add(liked);
    }

    void scab(int note) {
        worstScab = Math.max(worstScab, note);
    }

    void stored(int weeks) {
        weeksInStore = Math.max(weeksInStore, weeks);
    }

    void crop(int dayOfYear) {
        ripe = dayOfYear;
        years++;
    }

    void decided(String what) {
        decision = what;
    }

    String decision() {
        return decision;
    }

    int worstScab() {
        return worstScab;
    }

    int weeksInStore() {
        return weeksInStore;
    }

    int years() {
        return years;
    }

    int ripe() {
        return ripe;
    }

    double liking() {
        return liking.stream().mapToInt(Integer::intValue).average().orElse(0);
    }

    /** A figure to order seedlings by: a clean leaf before all, then taste and keeping. */
    double order() {
        double scabby = worstScab > 3 ? 4 : 0;
        return liking() + weeksInStore / 5.0 - 0.5 * worstScab - scabby;
    }

    /** The figures of the moment in words. */
    String words() {
        if (years == 0) {
            return "no fruit yet, worst scab " + worstScab;
        }
        String kept = weeksInStore == 0 ? "not stored yet" : "kept " + weeksInStore + " weeks";
        String crops = years == 1 ? "1 crop" : years + " crops";
        String day = LocalDate.ofYearDay(2025, ripe).format(DAY);
        return "liking %s in %s, worst scab %d, %s, ripe about %s"
                .formatted(Row.plain(Math.round(liking() * 10) / 10.0), crops, worstScab, kept, day);
    }
}
