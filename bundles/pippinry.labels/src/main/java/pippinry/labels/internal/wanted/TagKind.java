package pippinry.labels.internal.wanted;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pippinry.labels.internal.tag.Tag;

/** What tags are printed for. */
public enum TagKind {
    POLLINATIONS("pollinations", "branches pollinated or planned in the year", new PollinationTags()),
    NEUTRAL("neutral", "branches whose cross is not known yet; numbers are given out", new NeutralTags()),
    FRUITBAGS("fruitbags", "one for each fruit set and not harvested yet", new FruitBagTags()),
    SEEDLOTS("seedlots", "seed lots not potted up yet", new SeedLotTags()),
    POTS("pots", "own-root seedlings that have no place in the ground yet", PlantTags.inPots()),
    BUNDLES("bundles", "bundles of scions, one for each kind grafted in the year", new BundleTags()),
    GRAFTS("grafts", "grafts made in the year", PlantTags.graftedInTheYear()),
    PLANTS("plants", "all living plants", PlantTags.alive()),
    TREES("trees", "living plants in the ground, in walking order", PlantTags.inTheGround()),
    ROWS("rows", "row ends", new RowTags());

    private final String word;
    private final String about;
    private final TagSource source;

    TagKind(String word, String about, TagSource source) {
        this.word = word;
        this.about = about;
        this.source = source;
    }

    public String word() {
        return word;
    }

    /** For which records, in words. */
    public String about() {
        return about;
    }

    /** The tags wished; {@link IllegalArgumentException} when a number named is none of this kind. */
    public WantedTags wanted(Wish wish) {
        WantedTags all = source.wanted(wish);
        requireAll(wish, all);
        return wish.waiting() ? new WantedTags(waiting(wish, all), all.given()) : all;
    }

    private void requireAll(Wish wish, WantedTags all) {
        Set<String> found = new HashSet<>();
        all.tags().forEach(tag -> found.add(tag.number()));
        List<String> missing = wish.numbers().stream()
                .filter(number -> !found.contains(number))
                .toList();
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException("No tag for " + word + " can be made for " + String.join(", ", missing)
                    + ": no such number is on file among the " + word);
        }
    }

    private static List<Tag> waiting(Wish wish, WantedTags all) {
        PrintedTags printed = PrintedTags.of(wish.program());
        return all.tags().stream().filter(tag -> !printed.has(tag.number())).toList();
    }

    /** Empty when the word is none of ours. */
    public static Optional<TagKind> of(String word) {
        return Arrays.stream(values())
                .filter(kind -> kind.word.equalsIgnoreCase(word))
                .findFirst();
    }

    public static String words() {
        return Arrays.stream(values()).map(TagKind::word).collect(Collectors.joining(", "));
    }
}
