package pippinry.demo;

import java.util.ArrayList;
import java.util.List;

/** What has been seen of one seedling so far, as far as it bears on the choice. */
final class Impression {

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

    /** A figure to order seedlings by: taste first, then keeping, then a clean leaf. */
    double order() {
        return liking() + weeksInStore / 8.0 - 0.5 * worstScab;
    }

    /** The figures of the moment in words. */
    String words() {
        return "liking %s in %d crop%s, worst scab %d, kept %d weeks, ripe day %d"
                .formatted(Row.plain(liking()), years, years == 1 ? "" : "s", worstScab, weeksInStore, ripe);
    }
}
