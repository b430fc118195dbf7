package pippinry.exchange.internal.bring;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether 3/4/2016 is in April or in March, as a person says or as the list itself gives away. */
public enum DateOrder {
    DAY_FIRST,
    MONTH_FIRST,
    NOT_KNOWN;

    static final Pattern SLASHED = Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{4}|\\d{2})");
    private static final int MONTHS = 12;

    /** As it is written with an option, such as {@code day-first}. */
    public static Optional<DateOrder> named(String word) {
        return List.of(DAY_FIRST, MONTH_FIRST).stream()
                .filter(order ->
                        order.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(word))
                .findFirst();
    }

    /** One date with a 13 or more in it tells for the whole list; two that contradict each other tell nothing. */
    static DateOrder of(OwnList list) {
        boolean day = false;
        boolean month = false;
        for (OwnList.ListRow row : list.rows()) {
            for (String cell : row.cells()) {
                Matcher date = SLASHED.matcher(cell.strip());
                if (date.matches()) {
                    day |= Integer.parseInt(date.group(1)) > MONTHS;
                    month |= Integer.parseInt(date.group(2)) > MONTHS;
                }
            }
        }
        return day == month ? NOT_KNOWN : day ? DAY_FIRST : MONTH_FIRST;
    }
}
