package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Cross;
import pippinry.model.record.Done;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.record.PollinationKind;
import pippinry.model.record.Visit;

/**
 * A tagged branch with all visits to it.
 *
 * @param visits in the order of their days
 */
public record Branch(Pollination tag, List<Visit> visits) {

    /** A tree's flowers of one spring; older branches are finished, whatever their records lack. */
    private static final int SEASON_DAYS = 300;

    static Branch of(Program program, Pollination tag) {
        List<Visit> visits = program.table(Kinds.VISITS).citing(tag.tag().text()).stream()
                .map(Row::value)
                .filter(visit -> visit.pollination().equals(tag.tag()))
                .sorted(Comparator.comparing(
                        visit -> visit.time().map(time -> time.earliest()).orElse(LocalDate.MIN)))
                .toList();
        return new Branch(tag, visits);
    }

    /** Branches of the season around that day whose fruit is not picked. */
    static List<Branch> ofSeason(Program program, LocalDate today) {
        return program.table(Kinds.POLLINATIONS).stream()
                .filter(tag -> tag.harvestedFruits().isEmpty())
                .filter(tag -> !isOfAnOlderCross(program, tag, today))
                .map(tag -> of(program, tag))
                .filter(branch -> !branch.was(Done.HARVEST))
                .filter(branch -> branch.first()
                        .filter(day -> day.isAfter(today.minusDays(SEASON_DAYS)))
                        .isPresent())
                .toList();
    }

    /** Told from the cross alone, so that the visits of twenty years need not be read. */
    private static boolean isOfAnOlderCross(Program program, Pollination tag, LocalDate today) {
        return tag.cross()
                .flatMap(cross -> program.find(Kinds.CROSSES, cross))
                .flatMap(Cross::year)
                .filter(year -> year.latest().plusYears(1).isBefore(today))
                .isPresent();
    }

    /** The first dated visit; empty for a branch whose visits nobody dated. */
    Optional<LocalDate> first() {
        return days().findFirst();
    }

    /** On how many days pollen was brought. */
    public int passes() {
        return (int) passDays().count();
    }

    Optional<LocalDate> firstPass() {
        return passDays().findFirst();
    }

    Optional<LocalDate> lastPass() {
        return passDays().reduce((earlier, later) -> later);
    }

    /** The first day on which this was done; empty if it was not, or nobody dated it. */
    public Optional<LocalDate> day(Done did) {
        return days(did).findFirst();
    }

    boolean was(Done did) {
        return visits.stream().anyMatch(visit -> visit.did().equals(Optional.of(did)));
    }

    boolean isLost() {
        return was(Done.LOST) || !tag.lossCause().isEmpty();
    }

    boolean isHand() {
        return tag.kind().orElse(PollinationKind.HAND) == PollinationKind.HAND;
    }

    /** Fruits at the last count; empty before the first. */
    public OptionalInt fruits() {
        return visits.stream()
                .filter(visit -> visit.did()
                        .filter(did -> did == Done.SET || did == Done.JUNE)
                        .isPresent())
                .map(Visit::count)
                .filter(OptionalInt::isPresent)
                .reduce((earlier, later) -> later)
                .orElse(tag.setFruits());
    }

    boolean isBare() {
        return fruits().isPresent() && fruits().getAsInt() == 0;
    }

    private Stream<LocalDate> passDays() {
        return days(Done.POLLINATED);
    }

    private Stream<LocalDate> days(Done did) {
        return visits.stream()
                .filter(visit -> visit.did().equals(Optional.of(did)))
                .flatMap(visit -> visit.time().flatMap(time -> time.day()).stream())
                .distinct();
    }

    private Stream<LocalDate> days() {
        return visits.stream().flatMap(visit -> visit.time().flatMap(time -> time.day()).stream());
    }
}
