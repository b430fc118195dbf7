package pippinry.story.internal.number;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Column;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;

/** A story as values for JSON; records have the columns of their plain tables as keys, null for what is not known. */
public final class StoryJson {

    /** Tables that are always there, if only as an empty list. */
    private static final List<Kind<?>> ALWAYS = List.of(
            Kinds.NAMES,
            Kinds.ALLELES,
            Kinds.PLANTS,
            Kinds.GRAFTS,
            Kinds.PLACES,
            Kinds.LOSSES,
            Kinds.SCORES,
            Kinds.MOVES,
            Kinds.DECISIONS,
            Kinds.TASKS,
            Kinds.NOTES);

    private StoryJson() {}

    public static Map<String, Object> of(Story story, List<DueTask> due) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", story.number());
        json.put("check", Lookup.check(story.number()).map(String::valueOf).orElse(null));
        json.put("found", true);
        json.put(
                "found_by",
                story.about().by().isEmpty() ? "number" : story.about().by());
        json.put("table", story.about().kind().map(Kind::table).orElse("places"));
        json.put(
                "record", story.about().kind().flatMap(kind -> own(story, kind)).orElse(null));
        story.genotype().ifPresent(genotype -> {
            json.put("genotype", row(Kinds.GENOTYPES, genotype));
            json.put("parents", parents(story, genotype));
        });
        json.put("offspring", offspring(story));
        json.put("doubt", Doubts.of(story));
        json.put("places_now", rows(Kinds.PLACES, story.placesNow()));
        for (Kind<?> kind : Kinds.ALL) {
            if (ALWAYS.contains(kind) || story.kinds().contains(kind)) {
                json.put(kind.table(), table(story, kind));
            }
        }
        json.put("due", due.stream().map(StoryJson::due).toList());
        return json;
    }

    private static <T extends Record> Optional<Map<String, Object>> own(Story story, Kind<T> kind) {
        return story.record().map(record -> row(kind, kind.type().cast(record)));
    }

    private static <T extends Record> List<Map<String, Object>> table(Story story, Kind<T> kind) {
        return rows(kind, story.records(kind));
    }

    private static <T extends Record> List<Map<String, Object>> rows(Kind<T> kind, List<T> rows) {
        return rows.stream().map(row -> row(kind, row)).toList();
    }

    private static <T extends Record> Map<String, Object> row(Kind<T> kind, T row) {
        Map<String, Object> json = new LinkedHashMap<>();
        RecordComponent[] components = kind.type().getRecordComponents();
        List<Column> columns = kind.columns();
        for (int i = 0; i < columns.size(); i++) {
            json.put(columns.get(i).name(), value(kind.cell(row, columns.get(i)), components[i].getType()));
        }
        return json;
    }

    private static Object value(String cell, Class<?> type) {
        if (cell.isEmpty()) {
            return null;
        }
        if (type == OptionalInt.class) {
            return Integer.valueOf(cell);
        }
        return type == OptionalDouble.class ? Double.valueOf(cell) : cell;
    }

    private static Map<String, Object> parents(Story story, Genotype genotype) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put(
                "seed_parent",
                genotype.seedParent().map(code -> parent(story, code)).orElse(null));
        json.put("seed_link", genotype.seedLink().map(link -> link.word()).orElse(null));
        PollenParent<Genotype> pollen = genotype.pollenParent();
        json.put("pollen", pollen.how().word());
        json.put(
                "pollen_parents",
                pollen.candidates().stream().map(code -> parent(story, code)).toList());
        json.put("pollen_link", genotype.pollenLink().map(link -> link.word()).orElse(null));
        json.put("link_ground", genotype.linkGround().isEmpty() ? null : genotype.linkGround());
        json.put("sport_of", genotype.sportOf().map(code -> parent(story, code)).orElse(null));
        return json;
    }

    private static Map<String, Object> parent(Story story, Code<Genotype> code) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("code", code.text());
        json.put(
                "name",
                story.program()
                        .find(Kinds.GENOTYPES, code)
                        .map(Genotype::name)
                        .filter(name -> !name.isEmpty())
                        .orElse(null));
        return json;
    }

    private static Map<String, Object> offspring(Story story) {
        Map<String, Integer> counts = story.offspring();
        Map<String, Object> json = new LinkedHashMap<>();
        for (String key : List.of(Story.AS_SEED_PARENT, Story.AS_POLLEN_PARENT, Story.PERHAPS, Story.SPORTS)) {
            json.put(key, counts.getOrDefault(key, 0));
        }
        return json;
    }

    private static Map<String, Object> due(DueTask task) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("batch", task.batch());
        json.put("due", task.due().toString());
        json.put("until", task.until().toString());
        json.put("text", task.text());
        json.put("detail", task.detail());
        json.put("caution", task.caution().orElse(null));
        return json;
    }

    /** Why nothing is told. */
    public static Map<String, Object> of(Looked.Missing missing) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", missing.typed());
        json.put("found", false);
        json.put("reason", missing.because());
        json.put("nearest", new ArrayList<>(missing.nearest()));
        return json;
    }

    public static Map<String, Object> of(Looked.Several several) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", several.name());
        json.put("found", false);
        json.put("reason", "several have this name");
        json.put("nearest", several.keys());
        return json;
    }
}
