package pippinry.season.internal.due;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The list in words for a terminal, and as values for JSON. */
public final class Listing {

    private static final int BATCH_WIDTH = 12;

    private Listing() {}

    public static String words(DueList list) {
        StringBuilder words = new StringBuilder("From " + Words.date(list.today()) + " to " + Words.date(list.to()));
        words.append(list.open().isEmpty() ? ": nothing is due\n" : "\n");
        Set<String> cautioned = new HashSet<>();
        Group.of(list).forEach(group -> {
            words.append('\n').append(group.title()).append('\n');
            group.entries().forEach(entry -> words.append(line(list, entry, cautioned)));
        });
        long marked = list.entries().size() - list.open().size();
        if (marked > 0) {
            words.append('\n').append(marked).append(" more are marked as done or skipped\n");
        }
        list.missing().forEach(missing -> words.append('\n').append(missing).append('\n'));
        return words.toString();
    }

    /** @param cautioned what was said already: each caution is said once */
    private static String line(DueList list, Entry entry, Set<String> cautioned) {
        String indent = " ".repeat(BATCH_WIDTH + 2);
        StringBuilder line = new StringBuilder(
                ("  %-" + BATCH_WIDTH + "s").formatted(entry.task().batch()));
        line.append(entry.task().text())
                .append("  [")
                .append(Words.when(entry, list.today()))
                .append("]\n");
        if (!entry.task().detail().isBlank()) {
            line.append(indent).append(entry.task().detail()).append('\n');
        }
        entry.task().caution().filter(cautioned::add).ifPresent(caution -> line.append(indent)
                .append("Caution: ")
                .append(caution)
                .append('\n'));
        return line.toString();
    }

    public static Map<String, ?> json(DueList list) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("today", list.today().toString());
        json.put("to", list.to().toString());
        json.put(
                "tasks", list.entries().stream().map(entry -> json(list, entry)).toList());
        json.put("missing", List.copyOf(list.missing()));
        return json;
    }

    /** One task. */
    public static Map<String, Object> json(DueList list, Entry entry) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("batch", entry.task().batch());
        json.put("rule", entry.task().rule());
        json.put("due", entry.task().due().toString());
        json.put("until", entry.task().until().toString());
        json.put("overdue_days", entry.overdueDays(list.today()));
        json.put("text", entry.task().text());
        json.put("detail", entry.task().detail());
        json.put("caution", entry.task().caution().orElse(null));
        json.put("status", entry.status().word());
        json.put("subjects", entry.task().subjects());
        return json;
    }
}
