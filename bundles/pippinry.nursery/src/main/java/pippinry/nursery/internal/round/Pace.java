package pippinry.nursery.internal.round;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.record.Done;
import pippinry.model.record.Kinds;
import pippinry.model.record.Visit;

/**
 * How many flowers a pair of hands pollinates in an hour, from the times of its own visits. A round is what one hand did on
 * one day: its flowers over the time from the first to the last visit, with one more gap for the last branch. The middle of
 * all rounds of at least three branches counts; rounds that stretch over a whole day, with other work between, weigh no more
 * than others.
 *
 * @param rounds how many rounds it rests on
 */
public record Pace(String hand, double flowersAnHour, int rounds) {

    private static final int LEAST_BRANCHES = 3;
    private static final double MINUTES = 60;

    /** Every hand that has a round on file. */
    public static List<Pace> of(Program program) {
        Map<String, List<Visit>> hands = program.table(Kinds.VISITS).stream()
                .filter(visit -> visit.did().equals(Optional.of(Done.POLLINATED)))
                .filter(visit -> visit.time().flatMap(time -> time.time()).isPresent())
                .filter(visit -> visit.count().isPresent())
                .collect(Collectors.groupingBy(Visit::hand, TreeMap::new, Collectors.toList()));
        List<Pace> paces = new ArrayList<>();
        hands.forEach((hand, visits) -> of(hand, visits).ifPresent(paces::add));
        return paces;
    }

    private static Optional<Pace> of(String hand, List<Visit> visits) {
        Map<LocalDate, List<Visit>> days = visits.stream()
                .collect(Collectors.groupingBy(
                        visit -> visit.time().orElseThrow().day().orElseThrow(), TreeMap::new, Collectors.toList()));
        double[] rates = days.values().stream()
                .map(Pace::rate)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .sorted()
                .toArray();
        return rates.length == 0 ? Optional.empty() : Optional.of(new Pace(hand, median(rates), rates.length));
    }

    private static OptionalDouble rate(List<Visit> round) {
        List<LocalDateTime> times = round.stream().map(Pace::time).sorted().toList();
        double between =
                Duration.between(times.get(0), times.get(times.size() - 1)).toMinutes();
        if (round.size() < LEAST_BRANCHES || between == 0) {
            return OptionalDouble.empty();
        }
        double minutes = between * round.size() / (round.size() - 1);
        int flowers = round.stream().mapToInt(visit -> visit.count().getAsInt()).sum();
        return OptionalDouble.of(flowers / minutes * MINUTES);
    }

    private static LocalDateTime time(Visit visit) {
        return visit.time()
                .orElseThrow()
                .day()
                .orElseThrow()
                .atTime(visit.time().orElseThrow().time().orElseThrow());
    }

    private static double median(double[] sorted) {
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
