package pippinry.exchange.internal.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.CalendarScale;
import biweekly.property.ProductId;
import biweekly.property.Transparency;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Date;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import pippinry.model.ask.DueTask;

/**
 * Tasks as all-day events of an iCalendar (Desruisseaux, B., ed. 2009. RFC 5545). A task keeps its UID when its day moves, so that
 * a calendar that takes the file in again moves the event and does not double it: it is made of the program, the rule, the batch,
 * the year and how many of these came before in the year.
 */
public final class SeasonCalendar {

    private static final String PRODUCT = "-//Pippinry//Season//EN";
    private static final Comparator<DueTask> IN_ORDER = Comparator.comparing(DueTask::due)
            .thenComparing(DueTask::batch)
            .thenComparing(DueTask::rule)
            .thenComparing(DueTask::text);

    private final String program;
    private final Instant stamp;
    private final long sequence;

    /**
     * @param program what tells it from other programs
     * @param stamp when it was last changed
     * @param sequence grows with every change
     */
    public SeasonCalendar(String program, Instant stamp, long sequence) {
        this.program = program;
        this.stamp = stamp;
        this.sequence = sequence;
    }

    /**
     * The calendar's text.
     *
     * @param tasks of whole years, so that they are counted alike every time
     * @param from events that end before this day are left out
     * @param done tasks that are left out too
     */
    public String of(List<DueTask> tasks, LocalDate from, Predicate<DueTask> done) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId(new ProductId(PRODUCT));
        calendar.setCalendarScale(CalendarScale.gregorian());
        Map<String, Integer> seen = new HashMap<>();
        List<DueTask> ordered = new ArrayList<>(tasks);
        ordered.sort(IN_ORDER);
        for (DueTask task : ordered) {
            String one = String.join(
                    "\n",
                    program,
                    task.rule(),
                    task.batch(),
                    String.valueOf(task.due().getYear()));
            String uid = uid(one + "\n" + seen.merge(one, 1, Integer::sum));
            if (!task.until().isBefore(from) && !done.test(task)) {
                calendar.addEvent(event(task, uid));
            }
        }
        return OctetFolding.fold(text(calendar));
    }

    private static String uid(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
    }

    private VEvent event(DueTask task, String uid) {
        VEvent event = new VEvent();
        event.setUid(uid);
        event.setDateTimeStamp(Date.from(stamp));
        event.setSequence((int) Math.min(sequence, Integer.MAX_VALUE));
        event.setDateStart(day(task.due()), false);
        // The end of an all-day event is the day after its last.
        event.setDateEnd(day(task.until().plusDays(1)), false);
        event.setSummary(task.batch() + ": " + task.text());
        String caution = task.caution().map(text -> "Caution: " + text).orElse("");
        String detail = task.detail() + (task.detail().isEmpty() || caution.isEmpty() ? "" : "\n") + caution;
        if (!detail.isEmpty()) {
            event.setDescription(detail);
        }
        event.setTransparency(Transparency.transparent());
        event.addCategories(task.rule());
        return event;
    }

    /** A date without time; the library takes its parts in the zone of the computer. */
    private static ICalDate day(LocalDate day) {
        return new ICalDate(Date.from(day.atStartOfDay(ZoneId.systemDefault()).toInstant()), false);
    }

    private static String text(ICalendar calendar) {
        StringWriter text = new StringWriter();
        try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(calendar);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
