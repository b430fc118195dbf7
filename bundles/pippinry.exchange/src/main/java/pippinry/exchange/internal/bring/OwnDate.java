package pippinry.exchange.internal.bring;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates as people write them, turned into those of the plain tables. */
final class OwnDate {

    private static final Pattern ABOUT =
            Pattern.compile("(?:about|ca\\.?|c\\.|circa|~) ?(.+)|(.+?) ?\\?", Pattern.CASE_INSENSITIVE);
    private static final Pattern DOTTED = Pattern.compile("(\\d{1,2})\\. ?(\\d{1,2})\\. ?(\\d{4}|\\d{2})");
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[/.-](\\d{1,2})(?:[/.-](\\d{1,2}))?");
    private static final Pattern MONTH_YEAR = Pattern.compile("(\\d{1,2})[/.](\\d{4})");
    private static final Pattern WORDS =
            Pattern.compile("(?:(\\d{1,2})\\.? )?([a-z]{3,})\\.?,? (\\d{4})", Pattern.CASE_INSENSITIVE);
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    private final DateOrder order;
    private final LocalDate today;

    /** @param today years of two digits are not after it */
    OwnDate(DateOrder order, LocalDate today) {
        this.order = order;
        this.today = today;
    }

    /** The date as plain tables have it; empty if this is none. */
    Optional<String> read(String text) throws Unclear {
        Matcher about = ABOUT.matcher(text);
        if (about.matches()) {
            String rest = about.group(1) == null ? about.group(2) : about.group(1);
            return plain(rest.strip()).map(date -> "about " + date);
        }
        return plain(text);
    }

    private Optional<String> plain(String text) throws Unclear {
        Matcher dotted = DOTTED.matcher(text);
        if (dotted.matches()) {
            return Optional.of(date(dotted.group(3), dotted.group(2), dotted.group(1)));
        }
        Matcher slashed = DateOrder.SLASHED.matcher(text);
        if (slashed.matches()) {
            return Optional.of(slashed(text, slashed));
        }
        Matcher yearFirst = YEAR_FIRST.matcher(text);
        if (yearFirst.matches()) {
            return Optional.of(date(yearFirst.group(1), yearFirst.group(2), yearFirst.group(3)));
        }
        Matcher month = MONTH_YEAR.matcher(text);
        if (month.matches()) {
            return Optional.of(date(month.group(2), month.group(1), null));
        }
        Matcher words = WORDS.matcher(text);
        return words.matches() ? words(words) : text.matches("\\d{4}") ? Optional.of(text) : Optional.empty();
    }

    private String slashed(String text, Matcher date) throws Unclear {
        String one = date.group(1);
        String two = date.group(2);
        boolean same = Integer.parseInt(one) == Integer.parseInt(two);
        if (order == DateOrder.NOT_KNOWN && !same) {
            throw new Unclear(
                    "'" + text + "' has its day or its month first; --dates day-first or month-first says which");
        }
        return order == DateOrder.MONTH_FIRST ? date(date.group(3), one, two) : date(date.group(3), two, one);
    }

    private Optional<String> words(Matcher date) {
        int month = MONTHS.indexOf(date.group(2).toLowerCase(Locale.ROOT).substring(0, 3)) + 1;
        return month == 0 ? Optional.empty() : Optional.of(date(date.group(3), Integer.toString(month), date.group(1)));
    }

    private String date(String year, String month, String day) {
        String date = "%04d-%02d".formatted(year(Integer.parseInt(year)), Integer.parseInt(month));
        return day == null ? date : date + "-%02d".formatted(Integer.parseInt(day));
    }

    private int year(int year) {
        if (year >= 100) {
            return year;
        }
        int here = today.getYear() / 100 * 100 + year;
        return here > today.getYear() ? here - 100 : here;
    }
}
