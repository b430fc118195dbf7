package pippinry.season.internal.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Tasks that are read together.
 *
 * @param title such as {@code Overdue} or {@code Week of 6 April}
 */
public record Group(String title, List<Entry> entries) {

    private static final int WEEK = 7;

    /** Whether the last useful day of its tasks is past. */
    public boolean isOverdue() {
        return entries.stream().allMatch(entry -> entry.status() == Status.OVERDUE);
    }

    /** Overdue, to do now, the rest of this week, then week by week; groups without a task are left out. */
    public static List<Group> of(DueList list) {
        List<Group> groups = new ArrayList<>();
        groups.add(new Group("Overdue", list.with(Status.OVERDUE)));
        groups.add(new Group("To do now", list.with(Status.DUE)));
        LocalDate week = list.today();
        while (!week.isAfter(list.to())) {
            LocalDate next = week.plusDays(WEEK);
            String title = week.equals(list.today()) ? "In the next seven days" : "From " + Words.day(week);
            groups.add(new Group(title, list.coming(week, next)));
            week = next;
        }
        groups.removeIf(group -> group.entries().isEmpty());
        return groups;
    }
}
