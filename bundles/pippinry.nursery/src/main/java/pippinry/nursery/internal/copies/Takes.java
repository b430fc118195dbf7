package pippinry.nursery.internal.copies;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.record.Graft;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.statistics.proportions.Interval;
import pippinry.statistics.proportions.ProportionInterval;

/**
 * How many grafts took, by whatever they are told apart. Only grafts that were read as taken or failed count. The interval is
 * the score interval of Wilson (1927) at 95 %: {@link ProportionInterval#wilson}.
 */
public final class Takes {

    private static final double CONFIDENCE = 0.95;

    /** By what grafts are told apart. */
    public enum By {
        STOCK("stock", (program, graft) -> stock(program, graft)),
        METHOD("method", (program, graft) -> graft.method()),
        MONTH("month", (program, graft) -> month(graft)),
        HAND("hand", (program, graft) -> graft.hand());

        private final String word;
        private final BiFunction<Program, Graft, String> of;

        By(String word, BiFunction<Program, Graft, String> of) {
            this.word = word;
            this.of = of;
        }

        public String word() {
            return word;
        }
    }

    /**
     * Grafts of one sort.
     *
     * @param limits of the share that took
     */
    public record Take(String sort, int taken, int read, Interval limits) {

        public double share() {
            return (double) taken / read;
        }
    }

    private Takes() {}

    /** Sorts in the order of their names; an unknown sort is called so. */
    public static List<Take> of(Program program, By by) {
        Map<String, List<Graft>> sorts = read(program)
                .collect(Collectors.groupingBy(
                        graft -> sort(by.of.apply(program, graft)), TreeMap::new, Collectors.toList()));
        return sorts.entrySet().stream()
                .map(sort -> take(sort.getKey(), sort.getValue()))
                .toList();
    }

    private static Stream<Graft> read(Program program) {
        return program.table(Kinds.GRAFTS).stream()
                .filter(graft ->
                        graft.result().equals("taken") || graft.result().equals("failed"));
    }

    private static Take take(String sort, List<Graft> grafts) {
        int taken = (int)
                grafts.stream().filter(graft -> graft.result().equals("taken")).count();
        return new Take(sort, taken, grafts.size(), ProportionInterval.wilson(taken, grafts.size(), CONFIDENCE));
    }

    private static String sort(String text) {
        return text.isBlank() ? "not written down" : text;
    }

    private static String stock(Program program, Graft graft) {
        return program.find(Kinds.PLANTS, graft.plant()).map(Plant::rootstock).orElse("");
    }

    private static String month(Graft graft) {
        return graft.date()
                .flatMap(date -> date.month())
                .map(month -> "%02d %s"
                        .formatted(
                                month.getMonthValue(),
                                month.getMonth()
                                        .getDisplayName(java.time.format.TextStyle.FULL, java.util.Locale.ENGLISH)))
                .or(() -> Optional.of(""))
                .get();
    }
}
