package pippinry.story.internal.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantStatus;
import pippinry.model.value.PartialDate;

/** No place holds two plants on one day, and no plant stands in two places; partial dates give the benefit of the doubt. */
final class Ground implements Check {

    @Override
    public void look(Program program, Consumer<Finding> found) {
        List<Occupancy> all = program.table(Kinds.PLACES).stream().toList();
        overlaps(
                placed(all),
                Ground::place,
                (one, other) -> found.accept(Finding.fault(
                        "places",
                        place(one),
                        "plant",
                        other.plant(),
                        "it stands where " + one.plant() + " stands at the same time")));
        overlaps(
                all,
                occupancy -> occupancy.plant().text(),
                (one, other) -> found.accept(Finding.fault(
                        "places",
                        one.plant().text(),
                        "place",
                        place(other),
                        "it stands at " + place(one) + " at the same time")));
        all.forEach(occupancy -> ended(program, occupancy).ifPresent(found));
        placed(all).forEach(occupancy -> beyond(program, occupancy).ifPresent(found));
    }

    private static List<Occupancy> placed(List<Occupancy> all) {
        return all.stream()
                .filter(occupancy ->
                        occupancy.block().isPresent() && !occupancy.place().isEmpty())
                .toList();
    }

    private static String place(Occupancy occupancy) {
        return occupancy.block().map(Object::toString).orElse("?") + "/" + occupancy.row() + "/" + occupancy.place();
    }

    private interface Overlap {
        void of(Occupancy one, Occupancy other);
    }

    private static void overlaps(List<Occupancy> all, Function<Occupancy, String> by, Overlap overlap) {
        Map<String, List<Occupancy>> groups =
                all.stream().collect(Collectors.groupingBy(by, LinkedHashMap::new, Collectors.toList()));
        for (List<Occupancy> group : groups.values()) {
            List<Occupancy> before = new ArrayList<>();
            for (Occupancy next : group) {
                before.stream()
                        .filter(one -> !sameTwice(one, next) && surelyOverlap(one, next))
                        .forEach(one -> overlap.of(one, next));
                before.add(next);
            }
        }
    }

    private static boolean sameTwice(Occupancy one, Occupancy other) {
        return one.plant().equals(other.plant()) && place(one).equals(place(other));
    }

    /** Each is there on a day on which the other surely is too. */
    private static boolean surelyOverlap(Occupancy one, Occupancy other) {
        return surelyFrom(one).isBefore(surelyTo(other)) && surelyFrom(other).isBefore(surelyTo(one));
    }

    /** From this day on it is sure to stand there; an unknown beginning is never sure before the end. */
    private static LocalDate surelyFrom(Occupancy occupancy) {
        return occupancy
                .from()
                .map(PartialDate::latest)
                .or(() -> occupancy.to().map(PartialDate::earliest))
                .orElse(LocalDate.MIN);
    }

    private static LocalDate surelyTo(Occupancy occupancy) {
        return occupancy.to().map(PartialDate::earliest).orElse(LocalDate.MAX);
    }

    private static Optional<Finding> ended(Program program, Occupancy occupancy) {
        Optional<Plant> plant = program.find(Kinds.PLANTS, occupancy.plant());
        Optional<PlantStatus> status = plant.flatMap(Plant::status).filter(how -> how != PlantStatus.ALIVE);
        return status.filter(how -> occupancy.to().isEmpty())
                .map(how -> Finding.question(
                        "places",
                        occupancy.plant().text(),
                        "to",
                        "",
                        "it is " + how.word()
                                + plant.get()
                                        .endedOn()
                                        .map(day -> " since " + day)
                                        .orElse("") + ", yet its place " + place(occupancy) + " is not free"));
    }

    private static Optional<Finding> beyond(Program program, Occupancy occupancy) {
        String row = occupancy.block().orElseThrow() + "/" + occupancy.row();
        return program.table(Kinds.ROWS)
                .find(row)
                .filter(found -> found.value().places().isPresent())
                .map(found -> found.value().places().getAsInt())
                .filter(places -> occupancy.place().matches("\\d{1,6}") && Integer.parseInt(occupancy.place()) > places)
                .map(places -> Finding.question(
                        "places",
                        occupancy.plant().text(),
                        "place",
                        occupancy.place(),
                        "the row " + row + " has " + places + " places"));
    }
}
