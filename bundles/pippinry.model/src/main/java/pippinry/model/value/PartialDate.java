package pippinry.model.value;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Year;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date as well as it is known: {@code 2016}, {@code 2016-05}, {@code 2016-05-14}, {@code 2016-05-14T09:30}, or any of
 * these after {@code about}. It is kept as it was given, and sorts and reckons by the span of days that it may mean.
 *
 * <p>{@code about} widens the span by one unit of its own precision on both sides (common practice, no source).
 */
public record PartialDate(
        boolean about, Year year, Optional<YearMonth> month, Optional<LocalDate> day, Optional<LocalTime> time)
        implements Comparable<PartialDate> {

    private static final String ABOUT = "about ";
    private static final Pattern FORM =
            Pattern.compile("(about )?(\\d{4})(?:-(\\d{2})(?:-(\\d{2})(?:T(\\d{2}:\\d{2}))?)?)?");
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm");

    /** What {@link #parse} accepts, for a message. */
    public static final String EXPECTED =
            "a date that exists, as 2016-05-14, 2016-05 or 2016, also 'about 2016' or with a time, 2016-05-14T09:30";

    public static PartialDate of(LocalDate day) {
        return new PartialDate(
                false, Year.from(day), Optional.of(YearMonth.from(day)), Optional.of(day), Optional.empty());
    }

    public static PartialDate of(LocalDateTime minute) {
        LocalDate day = minute.toLocalDate();
        return new PartialDate(
                false,
                Year.from(day),
                Optional.of(YearMonth.from(day)),
                Optional.of(day),
                Optional.of(minute.toLocalTime().withSecond(0).withNano(0)));
    }

    /** @throws IllegalArgumentException if the text has another form or names a day that does not exist */
    public static PartialDate parse(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            throw new IllegalArgumentException(EXPECTED);
        }
        try {
            Year year = Year.parse(form.group(2));
            Optional<YearMonth> month =
                    Optional.ofNullable(form.group(3)).map(Integer::valueOf).map(year::atMonth);
            Optional<LocalDate> day = Optional.ofNullable(form.group(4))
                    .map(Integer::valueOf)
                    .map(number -> month.orElseThrow().atDay(number));
            Optional<LocalTime> time = Optional.ofNullable(form.group(5)).map(LocalTime::parse);
            return new PartialDate(form.group(1) != null, year, month, day, time);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(EXPECTED, e);
        }
    }

    /** The first day that it may mean. */
    public LocalDate earliest() {
        LocalDate first = day.or(() -> month.map(known -> known.atDay(1))).orElseGet(() -> year.atDay(1));
        return about ? shift(first, -1) : first;
    }

    /** The last day that it may mean. */
    public LocalDate latest() {
        LocalDate last = day.or(() -> month.map(YearMonth::atEndOfMonth)).orElseGet(() -> year.atDay(year.length()));
        return about ? shift(last, 1) : last;
    }

    private LocalDate shift(LocalDate date, int units) {
        if (day.isPresent()) {
            return date.plusDays(units);
        }
        return month.isPresent() ? date.plusMonths(units) : date.plusYears(units);
    }

    /** By first possible day, then time, then last possible day. */
    @Override
    public int compareTo(PartialDate other) {
        int order = earliest().compareTo(other.earliest());
        if (order == 0) {
            order = time.orElse(LocalTime.MIN).compareTo(other.time.orElse(LocalTime.MIN));
        }
        return order != 0 ? order : latest().compareTo(other.latest());
    }

    @Override
    public String toString() {
        String date = day.map(LocalDate::toString)
                .or(() -> month.map(YearMonth::toString))
                .orElseGet(() -> "%04d".formatted(year.getValue()));
        return (about ? ABOUT : "")
                + date
                + time.map(minute -> "T" + MINUTE.format(minute)).orElse("");
    }
}
