package pippinry.labels.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pippinry.commandline.Answer;
import pippinry.labels.internal.wanted.TagKind;
import pippinry.labels.internal.wanted.Wish;

/** What tags there are to print, and how many of them were never noted as printed. */
final class TagOverview {
    private final Wish wish;

    TagOverview(Wish wish) {
        this.wish = wish;
    }

    Answer answer() {
        List<Map<String, Object>> kinds = new ArrayList<>();
        List<String> lines = new ArrayList<>(List.of("%-14s %6s %8s".formatted("--for", "tags", "waiting")));
        for (TagKind kind : TagKind.values()) {
            if (kind != TagKind.NEUTRAL) {
                int all = kind.wanted(wish).tags().size();
                int waiting = kind.wanted(wish.onlyWaiting()).tags().size();
                kinds.add(row(kind, all, waiting));
                lines.add("%-14s %6d %8d  %s".formatted(kind.word(), all, waiting, kind.about()));
            }
        }
        lines.add("%-14s %6s %8s  %s".formatted(TagKind.NEUTRAL.word(), "--count", "", TagKind.NEUTRAL.about()));
        return Answer.of(Map.of("kinds", kinds), String.join("\n", lines));
    }

    private static Map<String, Object> row(TagKind kind, int all, int waiting) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("for", kind.word());
        row.put("about", kind.about());
        row.put("tags", all);
        row.put("waiting", waiting);
        return row;
    }
}
