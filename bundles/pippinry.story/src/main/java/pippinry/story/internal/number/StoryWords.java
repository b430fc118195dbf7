package pippinry.story.internal.number;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Column;
import pippinry.model.record.Decision;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.Word;

/** A story as a person reads it, section by section; a section about which nothing is known is left out. */
public final class StoryWords {

    private final Story story;
    private final StringBuilder words = new StringBuilder();

    private StoryWords(Story story) {
        this.story = story;
    }

    public static String of(Story story, List<DueTask> due) {
        StoryWords words = new StoryWords(story);
        words.head();
        words.parents();
        words.section("Doubt", Doubts.of(story));
        words.section(
                "Plants", story.records(Kinds.PLANTS).stream().map(words::plant).toList());
        words.places();
        words.offspring();
        words.section("Scores", words.scores());
        words.section(
                "Decisions",
                story.records(Kinds.DECISIONS).stream()
                        .map(StoryWords::decision)
                        .toList());
        words.others();
        words.section("Due", due.stream().map(StoryWords::due).toList());
        return words.words.toString();
    }

    private void head() {
        words.append(story.number());
        Lookup.check(story.number()).ifPresent(check -> words.append('=').append(check));
        if (!story.about().by().isEmpty()) {
            words.append(" (found by its ").append(story.about().by()).append(')');
        }
        words.append('\n');
        story.about().kind().ifPresentOrElse(this::ownCells, () -> line("place " + story.number()));
    }

    private <T extends Record> void ownCells(Kind<T> kind) {
        T own = kind.type().cast(story.record().orElseThrow());
        String cells = kind.columns().stream()
                .filter(column -> !kind.key().contains(column) && !PARENTS.contains(column.name()))
                .filter(column -> !kind.cell(own, column).isEmpty())
                .map(column -> column.name().replace('_', ' ') + " " + kind.cell(own, column))
                .collect(Collectors.joining("; "));
        line(SINGULAR.getOrDefault(kind, kind.table()) + (cells.isEmpty() ? "" : ": " + cells));
    }

    private static final List<String> PARENTS =
            List.of("seed_parent", "pollen_parent", "seed_link", "pollen_link", "link_ground");

    private static final Map<Kind<?>, String> SINGULAR = Map.of(
            Kinds.GENOTYPES, "genotype",
            Kinds.PLANTS, "plant",
            Kinds.CROSSES, "cross",
            Kinds.POLLEN, "pollen lot",
            Kinds.POLLINATIONS, "pollination",
            Kinds.SEEDLOTS, "seed lot",
            Kinds.SAMPLES, "sample",
            Kinds.BLOCKS, "block",
            Kinds.ROWS, "row",
            Kinds.SHEETS, "sheet");

    private void parents() {
        Optional<Genotype> genotype = story.genotype();
        if (genotype.isEmpty()) {
            return;
        }
        Genotype child = genotype.get();
        String pollen =
                switch (child.pollenParent().how()) {
                    case OPEN -> "open pollination";
                    case SELF -> "selfed";
                    case UNKNOWN -> "unknown";
                    case KNOWN, CANDIDATES ->
                        child.pollenParent().candidates().stream()
                                .map(this::named)
                                .collect(Collectors.joining(" or "));
                };
        boolean nothing = child.seedParent().isEmpty() && pollen.equals("unknown");
        String ground = child.linkGround().isEmpty() ? "" : "; ground: " + child.linkGround();
        String parents = nothing
                ? "not known"
                : "seed parent " + child.seedParent().map(this::named).orElse("unknown") + link(child.seedLink())
                        + ", pollen parent " + pollen + link(child.pollenLink()) + ground;
        section("Parents", List.of(parents));
    }

    private static String link(Optional<? extends Word> certainty) {
        return certainty.map(how -> " (" + how.word() + ")").orElse("");
    }

    private String named(Code<Genotype> code) {
        return story.program()
                .find(Kinds.GENOTYPES, code)
                .map(Genotype::name)
                .filter(name -> !name.isEmpty())
                .map(name -> name + " [" + code + "]")
                .orElse(code.text());
    }

    private String plant(Plant plant) {
        String stock = plant.rootstock().isEmpty() ? "" : " on " + plant.rootstock();
        String made = plant.madeOn().map(date -> ", made " + date).orElse("");
        String status = plant.status().map(word -> ", " + word.word()).orElse("");
        String ended = plant.endedOn().map(date -> " " + date).orElse("");
        String cause = plant.cause().isEmpty() ? "" : " (" + plant.cause() + ")";
        String host = plant.host()
                .map(tree -> " on " + tree
                        + plant.limbHeightM().stream()
                                .mapToObj(m -> " at " + m + " m")
                                .findFirst()
                                .orElse("") + (plant.limbSide().isEmpty() ? "" : " " + plant.limbSide()))
                .orElse("");
        String note = plant.note().isEmpty() ? "" : "; " + plant.note();
        return plant.tag() + ": " + plant.kind().map(Word::word).orElse("plant") + stock + host + made + status + ended
                + cause + note;
    }

    private void places() {
        List<Occupancy> now = story.placesNow();
        section("Stands now", now.stream().map(this::place).toList());
        List<Occupancy> before = new ArrayList<>(story.records(Kinds.PLACES));
        before.removeAll(now);
        section("Stood before", before.stream().map(this::place).toList());
    }

    private String place(Occupancy occupancy) {
        return occupancy.plant() + " at " + Story.place(occupancy)
                + occupancy.from().map(date -> " from " + date).orElse("")
                + occupancy.to().map(date -> " to " + date).orElse("");
    }

    private void offspring() {
        Map<String, Integer> counts = story.offspring();
        if (!counts.isEmpty()) {
            section(
                    "Offspring",
                    List.of(counts.getOrDefault(Story.AS_SEED_PARENT, 0) + " as seed parent, "
                            + counts.getOrDefault(Story.AS_POLLEN_PARENT, 0) + " as pollen parent, "
                            + counts.getOrDefault(Story.PERHAPS, 0) + " perhaps, "
                            + counts.getOrDefault(Story.SPORTS, 0) + " sports"));
        }
    }

    /** One line for each trait, its values by date. */
    private List<String> scores() {
        Map<String, List<Score>> byTrait = story.records(Kinds.SCORES).stream()
                .collect(Collectors.groupingBy(Score::trait, LinkedHashMap::new, Collectors.toList()));
        List<String> lines = new ArrayList<>();
        byTrait.forEach((trait, scores) ->
                lines.add(trait + ": " + scores.stream().map(this::score).collect(Collectors.joining("; "))));
        return lines;
    }

    private String score(Score score) {
        String unit = score.unit().isEmpty() ? "" : " " + score.unit();
        String subject = score.subject().text();
        String copy = subject.startsWith(story.number())
                ? subject.substring(story.number().length())
                : subject;
        String whose = copy.isEmpty() ? "" : " [" + copy + "]";
        String scorer = score.scorer().isEmpty() ? "" : " " + score.scorer();
        String seen = score.value().notSeen() ? "not seen" : score.value() + unit;
        return score.date().map(PartialDate::toString).orElse("undated") + " " + seen + whose + scorer;
    }

    private static String decision(Decision decision) {
        String person = decision.person().isEmpty() ? "" : " by " + decision.person();
        String grounds = decision.grounds().isEmpty() ? "" : ": " + decision.grounds();
        return decision.date().map(date -> date + " ").orElse("")
                + decision.decision().word()
                + person
                + grounds;
    }

    private void others() {
        List<Kind<?>> told = List.of(Kinds.PLANTS, Kinds.PLACES, Kinds.SCORES, Kinds.DECISIONS);
        for (Kind<?> kind : story.kinds()) {
            if (!told.contains(kind)) {
                String title = kind.table().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                        + kind.table().substring(1);
                section(title, lines(kind));
            }
        }
    }

    private <T extends Record> List<String> lines(Kind<T> kind) {
        return story.records(kind).stream().map(row -> line(kind, row)).toList();
    }

    private <T extends Record> String line(Kind<T> kind, T row) {
        return kind.columns().stream()
                .filter(column -> !kind.cell(row, column).isEmpty())
                .filter(column -> !kind.cell(row, column).equals(story.number()))
                .map(column -> cell(kind, row, column))
                .collect(Collectors.joining("; "));
    }

    private static <T extends Record> String cell(Kind<T> kind, T row, Column column) {
        boolean plain = kind.key().contains(column)
                || List.of("date", "text", "name", "note").contains(column.name());
        return (plain ? "" : column.name().replace('_', ' ') + " ") + kind.cell(row, column);
    }

    private static String due(DueTask task) {
        String caution = task.caution().map(text -> " Caution: " + text).orElse("");
        return task.due() + " " + task.batch() + ": " + task.text() + caution;
    }

    private void section(String title, List<String> lines) {
        if (!lines.isEmpty()) {
            words.append(title).append('\n');
            lines.forEach(this::line);
        }
    }

    private void line(String text) {
        words.append("  ").append(text.replace("\n", "\n    ")).append('\n');
    }
}
