package pippinry.season.internal.walk;

import java.util.List;
import pippinry.panels.Page;
import pippinry.season.internal.due.DueList;
import pippinry.season.internal.due.Entry;
import pippinry.season.internal.due.Status;
import pippinry.season.internal.due.Words;

/** The sheet that is carried out in the morning: what to do at which place, in walking order, with a box to tick. */
public final class DaySheet {

    private static final String BOX = "□";

    private DaySheet() {}

    /** What can be done on this day: overdue or due, not what is still to come. */
    public static List<Entry> ofDay(DueList list) {
        return list.open().stream()
                .filter(entry -> entry.status() != Status.COMING)
                .toList();
    }

    public static void write(Walk walk, DueList list, Page page) {
        page.paragraph("For " + Words.date(list.today()) + ", in walking order: up one row and down the next.");
        if (walk.stops().isEmpty() && walk.atHome().isEmpty()) {
            page.paragraph("Nothing is due.");
        }
        if (!walk.stops().isEmpty()) {
            page.heading("Outside");
            page.table(
                    List.of("", "Place", "Number", "What to do"),
                    walk.stops().stream().map(DaySheet::row).toList());
        }
        if (!walk.atHome().isEmpty()) {
            page.heading("In the nursery and at the desk");
            page.table(
                    List.of("", "Batch", "What to do"),
                    walk.atHome().stream()
                            .map(entry -> List.of(BOX, entry.task().batch(), both(entry)))
                            .toList());
        }
        java.util.stream.Stream.concat(walk.stops().stream().map(Walk.Stop::entry), walk.atHome().stream())
                .flatMap(entry -> entry.task().caution().stream())
                .distinct()
                .forEach(page::caution);
    }

    private static List<String> row(Walk.Stop stop) {
        return List.of(BOX, stop.place(), stop.number(), stop.entry().task().text());
    }

    private static String both(Entry entry) {
        String detail = entry.task().detail();
        return detail.isBlank() ? entry.task().text() : entry.task().text() + "\n" + detail;
    }
}
