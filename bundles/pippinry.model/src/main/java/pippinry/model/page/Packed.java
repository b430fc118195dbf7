package pippinry.model.page;

import java.time.DateTimeException;
import java.time.LocalDate;

/**
 * A cell of a table as one number. Nothing, a number as it is written, a day and a minute stand for themselves; any other
 * text is the number of a word. Packing and unpacking gives the same text, zeros at the end included.
 *
 * <p>The two lowest bits say which: 0 nothing, 1 a word, 2 a decimal (then four bits of scale, then the digits with their
 * sign), 3 a time (then one bit for minutes, then days or minutes since 1970).
 */
public final class Packed {

    /** An empty cell. */
    public static final long NOTHING = 0;

    /** What {@link #plain} gives for a text that is neither number nor time. */
    public static final long NOT_PLAIN = Long.MIN_VALUE;

    private static final int WORD = 1;
    private static final int DECIMAL = 2;
    private static final int TIME = 3;
    private static final int MOST_DIGITS = 15;
    private static final int DAY_LENGTH = "2016-05-14".length();
    private static final int MINUTE_LENGTH = "2016-05-14T09:30".length();
    private static final long MINUTES_A_DAY = 24 * 60;

    private Packed() {}

    public static long word(int number) {
        return (long) number << 2 | WORD;
    }

    public static boolean isWord(long packed) {
        return (packed & 3) == WORD;
    }

    public static int wordNumber(long packed) {
        return (int) (packed >>> 2);
    }

    /** The text as a number or time; {@link #NOT_PLAIN} if it is neither, or not written as we would write it. */
    public static long plain(String text) {
        if (text.isEmpty()) {
            return NOTHING;
        }
        boolean time = text.length() >= DAY_LENGTH && text.charAt(4) == '-' && text.charAt(7) == '-';
        return time ? time(text) : decimal(text);
    }

    private static long decimal(String text) {
        boolean negative = text.charAt(0) == '-';
        int start = negative ? 1 : 0;
        int point = text.indexOf('.');
        int whole = (point < 0 ? text.length() : point) - start;
        int scale = point < 0 ? 0 : text.length() - point - 1;
        boolean wellFormed = whole > 0
                && whole + scale <= MOST_DIGITS
                && (point < 0 || scale > 0)
                && (whole == 1 || text.charAt(start) != '0');
        long digits = wellFormed ? digits(text, start, point) : -1;
        if (digits < 0 || negative && digits == 0) {
            return NOT_PLAIN;
        }
        return (negative ? -digits : digits) << 6 | (long) scale << 2 | DECIMAL;
    }

    /** Negative if any sign but the point is no digit. */
    private static long digits(String text, int start, int point) {
        long digits = 0;
        for (int i = start; i < text.length(); i++) {
            int digit = text.charAt(i) - '0';
            if (i == point) {
                continue;
            }
            if (digit < 0 || digit > 9) {
                return -1;
            }
            digits = digits * 10 + digit;
        }
        return digits;
    }

    private static long time(String text) {
        boolean minute = text.length() == MINUTE_LENGTH;
        if (!minute && text.length() != DAY_LENGTH) {
            return NOT_PLAIN;
        }
        int year = number(text, 0, 4);
        int month = number(text, 5, 7);
        int day = number(text, 8, 10);
        if (year < 0 || month < 1 || day < 1) {
            return NOT_PLAIN;
        }
        try {
            long days = LocalDate.of(year, month, day).toEpochDay();
            return minute ? minute(text, days) : days << 3 | TIME;
        } catch (DateTimeException e) {
            return NOT_PLAIN;
        }
    }

    private static long minute(String text, long days) {
        int hour = number(text, 11, 13);
        int minute = number(text, 14, 16);
        boolean fits = text.charAt(10) == 'T'
                && text.charAt(13) == ':'
                && hour >= 0
                && hour < 24
                && minute >= 0
                && minute < 60;
        return fits ? (days * MINUTES_A_DAY + hour * 60L + minute) << 3 | 1 << 2 | TIME : NOT_PLAIN;
    }

    private static int number(String text, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            number = number * 10 + digit;
        }
        return number;
    }

    public static String text(long packed, Words words) {
        if (packed == NOTHING) {
            return "";
        }
        return switch ((int) (packed & 3)) {
            case WORD -> words.text(wordNumber(packed));
            case DECIMAL -> decimalText(packed >> 6, (int) (packed >> 2 & 15));
            case TIME ->
                (packed & 1 << 2) == 0 ? LocalDate.ofEpochDay(packed >> 3).toString() : minuteText(packed >> 3);
            default -> throw new IllegalArgumentException("no packed cell: " + packed);
        };
    }

    private static String decimalText(long digits, int scale) {
        String text = Long.toString(Math.abs(digits));
        if (scale > 0) {
            text = "0".repeat(Math.max(0, scale + 1 - text.length())) + text;
            int point = text.length() - scale;
            text = text.substring(0, point) + "." + text.substring(point);
        }
        return digits < 0 ? "-" + text : text;
    }

    private static String minuteText(long minutes) {
        LocalDate day = LocalDate.ofEpochDay(Math.floorDiv(minutes, MINUTES_A_DAY));
        int minute = (int) Math.floorMod(minutes, MINUTES_A_DAY);
        return day + "T" + two(minute / 60) + ":" + two(minute % 60);
    }

    private static String two(int number) {
        return number < 10 ? "0" + number : Integer.toString(number);
    }
}
