package pippinry.labels.internal.wanted;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Pollination;

/** What a sheet is walked past. */
public enum SheetKind {
    TREES("trees", "Score sheet", List.of()),
    POTS("pots", "Score sheet", List.of()),
    POLLINATIONS("pollinations", "Count sheet", List.of("set", "june", "harvest")),
    SEEDLOTS("seedlots", "Count sheet", List.of("emerged", "potted"));

    private final String word;
    private final String title;
    private final List<String> usualColumns;

    SheetKind(String word, String title, List<String> usualColumns) {
        this.word = word;
        this.title = title;
        this.usualColumns = usualColumns;
    }

    public String word() {
        return word;
    }

    public String title() {
        return title;
    }

    /** The columns when none are named; empty where they must be. */
    public List<String> usualColumns() {
        return usualColumns;
    }

    /** Trees and pots are scored by traits, the others are counted. */
    public boolean isScored() {
        return usualColumns.isEmpty();
    }

    /** The codes of what is wished, in walking order. */
    public List<String> subjects(Wish wish) {
        return switch (this) {
            case TREES -> numbers(TagKind.TREES, wish);
            case POTS -> numbers(TagKind.POTS, wish);
            case SEEDLOTS -> numbers(TagKind.SEEDLOTS, wish);
            case POLLINATIONS -> branches(wish);
        };
    }

    private static List<String> numbers(TagKind kind, Wish wish) {
        return kind.wanted(wish).tags().stream().map(tag -> tag.number()).toList();
    }

    /** Branches on file, tree by tree as they stand. */
    private static List<String> branches(Wish wish) {
        Comparator<Optional<Plant>> byTree = Comparator.comparing((Optional<Plant> tree) -> tree.isEmpty())
                .thenComparing(
                        tree -> tree.orElse(null),
                        Comparator.nullsLast(Standing.of(wish.program()).walking()));
        return numbers(TagKind.POLLINATIONS, wish).stream()
                .flatMap(number -> wish.program().table(Kinds.POLLINATIONS).find(number).stream())
                .map(row -> row.value())
                .sorted(Comparator.comparing(branch -> tree(wish.program(), branch), byTree))
                .map(branch -> branch.tag().text())
                .toList();
    }

    private static Optional<Plant> tree(Program program, Pollination branch) {
        return branch.plant().flatMap(code -> program.find(Kinds.PLANTS, code));
    }

    /** Empty when the word is none of ours. */
    public static Optional<SheetKind> of(String word) {
        return Arrays.stream(values())
                .filter(kind -> kind.word.equalsIgnoreCase(word))
                .findFirst();
    }

    public static String words() {
        return Arrays.stream(values()).map(SheetKind::word).collect(Collectors.joining(", "));
    }
}
