package pippinry.exchange.internal.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pippinry.model.ask.DueTask;

class SeasonCalendarTest {

    private static final Instant STAMP = Instant.parse("2026-11-25T12:00:00Z");
    private static final LocalDate START = LocalDate.of(2026, 1, 1);

    private static final String SAMPLE_WORDS =
            "Bag at balloon stage (BBCH 59).\nPollen lot P-26-03, vial 2; second pollination"
                    + " after 2 days.\nWrite flowers, date, hand.";

    private static DueTask task(String batch, String rule, LocalDate due, LocalDate until, String text, String detail) {
        return new DueTask(batch, rule, due, until, text, detail, Optional.empty());
    }

    private static final DueTask SAMPLE = task(
            "26-014",
            "cross",
            LocalDate.of(2027, 4, 25),
            LocalDate.of(2027, 5, 8),
            "Crosses; Golden Delicious × Prima, block 2",
            SAMPLE_WORDS);

    private static String calendar(DueTask... tasks) {
        return new SeasonCalendar("2012-03-01T09:00:00Z", STAMP, 69).of(List.of(tasks), START, task -> false);
    }

    private static List<String> unfolded(String text) {
        return List.of(text.replace("\r\n ", "").replace("\r\n\t", "").split("\r\n"));
    }

    private static String line(List<String> lines, String property) {
        return lines.stream()
                .filter(line -> line.startsWith(property + ":") || line.startsWith(property + ";"))
                .findFirst()
                .orElseThrow();
    }

    /** ical-sample.ics, first event: put together and checked by hand after RFC 5545. */
    @Test
    void anEventIsWrittenAsInTheSample() throws IOException {
        String sample;
        try (InputStream in = getClass().getResourceAsStream("/practice/ical-sample.ics")) {
            sample = new String(in.readAllBytes(), UTF_8);
        }
        List<String> wanted = unfolded(sample);
        List<String> lines = unfolded(calendar(SAMPLE));
        assertEquals("BEGIN:VCALENDAR", lines.get(0));
        assertEquals("VERSION:2.0", lines.get(1));
        for (String property : List.of("CALSCALE", "DTSTAMP", "DTSTART", "DTEND", "TRANSP")) {
            assertEquals(line(wanted, property), line(lines, property));
        }
        assertEquals("SUMMARY:26-014: Crosses\\; Golden Delicious × Prima\\, block 2", line(lines, "SUMMARY"));
        String words =
                "DESCRIPTION:Bag at balloon stage (BBCH 59).\\nPollen lot P-26-03\\, vial 2\\; second pollination after"
                        + " 2 days.\\nWrite flowers\\, date\\, hand.";
        assertEquals(words, line(lines, "DESCRIPTION"));
        assertEquals(words, line(wanted, "DESCRIPTION"));
    }

    @Test
    void linesEndInBothSignsAndHaveAtMost75OctetsAndNoLetterIsCut() {
        String text = calendar(
                SAMPLE,
                task("Ö", "×", START, START, "× ".repeat(100), "梨\uD83C\uDF4E".repeat(60) + "\n" + "é".repeat(75)),
                task("L", "r", START, START, "x".repeat(67), "y".repeat(62)));
        assertTrue(text.endsWith("END:VCALENDAR\r\n"));
        assertFalse(text.replace("\r\n", "").contains("\n"));
        for (String line : text.split("\r\n")) {
            assertTrue(line.getBytes(UTF_8).length <= 75, line);
            assertFalse(Character.isLowSurrogate(line.charAt(line.startsWith(" ") ? 1 : 0)), line);
        }
        assertTrue(Arrays.stream(text.split("\r\n")).anyMatch(line -> line.getBytes(UTF_8).length == 75));
    }

    /** RFC 5545, section 3.1, shows a folded line that unfolds to one; folding ours and unfolding gives the same back. */
    @Test
    void unfoldingGivesBackWhatWasFolded() {
        String line = "DESCRIPTION:" + "This is a long description × that exists on a long line. ".repeat(9) + "\r\n";
        assertEquals(line, OctetFolding.fold(line).replace("\r\n ", ""));
        assertTrue(OctetFolding.fold(line).contains("\r\n "));
        String short75 = "x".repeat(75) + "\r\n";
        assertEquals(short75, OctetFolding.fold(short75));
        assertEquals("x".repeat(75) + "\r\n x\r\n", OctetFolding.fold("x".repeat(76) + "\r\n"));
        assertEquals("x".repeat(74) + "\r\n é\r\n", OctetFolding.fold("x".repeat(74) + "é\r\n"));
    }

    @Test
    void anotherReaderFindsTheSameWords() {
        String nasty = "a\\b;c,d\"e:f\nBEGIN:VEVENT\nEND:VCALENDAR\\n";
        ICalendar read = Biweekly.parse(calendar(task("B;,", "r", START, START, nasty, nasty)))
                .first();
        assertEquals(1, read.getEvents().size());
        VEvent event = read.getEvents().get(0);
        assertEquals("B;,: " + nasty, event.getSummary().getValue());
        assertEquals(nasty, event.getDescription().getValue());
        assertEquals(List.of(), read.validate(biweekly.ICalVersion.V2_0).getWarnings());
    }

    @Test
    void aTaskKeepsItsUidWhenItsDayMovesAndTwoNeverShareOne() {
        DueTask first = task("26-014", "look", START.plusDays(10), START.plusDays(11), "Look", "");
        DueTask second = task("26-014", "look", START.plusDays(20), START.plusDays(21), "Look again", "");
        DueTask other = task("26-015", "look", START.plusDays(10), START.plusDays(11), "Look", "");
        List<String> before = uids(calendar(first, second, other));
        DueTask moved = task("26-014", "look", START.plusDays(13), START.plusDays(14), "Look", "");
        assertEquals(3, before.stream().distinct().count());
        assertEquals(
                before.stream().sorted().toList(),
                uids(calendar(second, other, moved)).stream().sorted().toList());
    }

    @Test
    void whatIsOverOrDoneIsLeftOutAndCountsStill() {
        DueTask over = task("26-014", "look", START.minusDays(10), START.minusDays(1), "Look", "");
        DueTask next = task("26-014", "look", START.plusDays(1), START.plusDays(2), "Look again", "");
        assertEquals(1, uids(calendar(over, next)).size());
        String none = new SeasonCalendar("x", STAMP, 1).of(List.of(next), START, next::equals);
        assertEquals(List.of(), uids(none));
    }

    @Test
    void aCautionStandsInTheEvent() {
        DueTask spray = new DueTask(
                "A", "spray", START, START, "Spray", "first of three", Optional.of("Follow the label and local law."));
        assertEquals(
                "DESCRIPTION:first of three\\nCaution: Follow the label and local law.",
                line(unfolded(calendar(spray)), "DESCRIPTION"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTC", "Pacific/Auckland", "America/Los_Angeles", "Asia/Kathmandu"})
    void daysAreTheSameWhereverTheComputerStands(String zone) {
        TimeZone before = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            List<String> lines = unfolded(calendar(SAMPLE));
            assertEquals("DTSTART;VALUE=DATE:20270425", line(lines, "DTSTART"));
            assertEquals("DTEND;VALUE=DATE:20270509", line(lines, "DTEND"));
            assertEquals("DTSTAMP:20261125T120000Z", line(lines, "DTSTAMP"));
        } finally {
            TimeZone.setDefault(before);
        }
    }

    private static List<String> uids(String calendar) {
        return unfolded(calendar).stream()
                .filter(line -> line.startsWith("UID:"))
                .toList();
    }
}
