package pippinry.labels.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pippinry.commandline.Answer;
import pippinry.labels.internal.sheet.SheetFormat;
import pippinry.labels.internal.tag.Tag;
import pippinry.labels.internal.tag.TagsPrinted;
import pippinry.labels.internal.wanted.TagKind;
import pippinry.labels.internal.wanted.WantedTags;

/** Tells what was printed. */
record TagsAnswer(TagKind kind, WantedTags wanted, TagsPrinted printed, SheetFormat format, boolean recorded) {
    static Answer nothing(TagKind kind, boolean waiting) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", null);
        json.put("for", kind.word());
        json.put("tags", 0);
        json.put("pages", 0);
        String words = waiting
                ? "No tag for " + kind.word() + " waits to be printed; without --waiting all are printed again"
                : "There is nothing to print tags for: " + kind.about();
        return Answer.no(json, words);
    }

    Answer in(Path file) {
        return Answer.of(json(file), words(file));
    }

    private Map<String, Object> json(Path file) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", file.toString());
        json.put("for", kind.word());
        json.put("sheet", format.name());
        json.put("tags", printed.tags());
        json.put("labels", printed.labels());
        json.put("pages", printed.pages());
        json.put(
                "next_free", printed.nextFree().isPresent() ? printed.nextFree().getAsInt() : null);
        json.put("module_mm", printed.module().isPresent() ? printed.module().getAsDouble() : null);
        json.put("readable_from_m", printed.readableFrom());
        json.put("recorded", recorded);
        json.put("numbers", wanted.tags().stream().map(Tag::code).toList());
        json.put("warnings", printed.warnings());
        return json;
    }

    private String words(Path file) {
        List<String> lines = new ArrayList<>();
        lines.add("%d tags for %s on %d %s of %s, in %s"
                .formatted(
                        printed.tags(),
                        kind.word(),
                        printed.pages(),
                        printed.pages() == 1 ? "page" : "pages",
                        format,
                        file));
        lines.add(String.format(
                Locale.ROOT, "Print at 100 %%. Numbers are read from %.1f m%s", printed.readableFrom(), module()));
        printed.nextFree().ifPresent(next -> lines.add("The last sheet is free from label " + next + " on (--start)"));
        lines.add(recorded ? "Noted as printed" : "Not noted as printed; --record does that");
        printed.warnings().forEach(warning -> lines.add("Mind: " + warning));
        return String.join("\n", lines);
    }

    private String module() {
        return printed.module().isPresent()
                ? String.format(
                        Locale.ROOT,
                        "; code modules are %.2f mm",
                        printed.module().getAsDouble())
                : "";
    }
}
