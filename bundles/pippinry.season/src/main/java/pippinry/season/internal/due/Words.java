package pippinry.season.internal.due;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How days are said. */
public final class Words {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter LONG = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private Words() {}

    /** Such as {@code 6 April}. */
    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** Such as {@code 6 Apr}. */
    static String shortDay(LocalDate day) {
        return SHORT.format(day);
    }

    /** Such as {@code 6 April 2026}. */
    public static String date(LocalDate day) {
        return LONG.format(day);
    }

    /** When a task is to be done, with the year where it is not the current one. */
    public static String when(Entry entry, LocalDate today) {
        LocalDate due = entry.task().due();
        LocalDate until = entry.task().until();
        String span = due.equals(until) ? said(due, today) : said(due, today) + " to " + said(until, today);
        long late = entry.overdueDays(today);
        return late == 0 ? span : span + ", " + (late == 1 ? "1 day late" : late + " days late");
    }

    private static String said(LocalDate day, LocalDate today) {
        return day.getYear() == today.getYear() ? day(day) : date(day);
    }
}
