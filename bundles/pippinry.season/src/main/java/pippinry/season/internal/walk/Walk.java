package pippinry.season.internal.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.season.internal.due.Entry;

/**
 * The way through a day's work: up one row and down the next, so that nobody walks back empty-handed; what has no place on the
 * ground comes last.
 *
 * @param stops in walking order
 * @param atHome tasks with something to go to that stands in no row, or with nothing to go to
 */
public record Walk(List<Stop> stops, List<Entry> atHome) {

    /** Something to do at a place. */
    public record Stop(Spot spot, String number, Entry entry) {

        public String place() {
            return spot.words();
        }
    }

    public static Walk of(Program program, List<Entry> entries) {
        Spots spots = new Spots(program);
        List<Stop> stops = new ArrayList<>();
        List<Entry> atHome = new ArrayList<>();
        for (Entry entry : entries) {
            int before = stops.size();
            for (String number : entry.task().subjects()) {
                spots.of(number).forEach(spot -> stops.add(new Stop(spot, number, entry)));
            }
            if (stops.size() == before) {
                atHome.add(entry);
            }
        }
        return new Walk(upAndDown(stops), atHome);
    }

    /** The same with only this block, and only this row of it if one is named. */
    public Walk in(String block, Optional<String> row) {
        return new Walk(
                stops.stream()
                        .filter(stop -> stop.spot().block().equals(block))
                        .filter(stop -> row.filter(
                                        some -> !some.equals(stop.spot().row()))
                                .isEmpty())
                        .toList(),
                List.of());
    }

    private static List<Stop> upAndDown(List<Stop> stops) {
        List<Stop> along = new ArrayList<>(stops);
        along.sort(Comparator.comparing(Stop::spot, Spot.ALONG_THE_ROWS).thenComparing(Stop::number));
        List<Stop> walked = new ArrayList<>();
        boolean down = false;
        for (int start = 0; start < along.size(); ) {
            int end = start;
            while (end < along.size()
                    && along.get(end).spot().isInRowOf(along.get(start).spot())) {
                end++;
            }
            List<Stop> row = new ArrayList<>(along.subList(start, end));
            if (down) {
                Collections.reverse(row);
            }
            walked.addAll(row);
            down = !down;
            start = end;
        }
        return walked;
    }
}
