package pippinry.exchange.internal.bring;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Which column of a list goes where: as the person says, else as its name suggests; what goes nowhere is kept as notes. */
public final class Mapping {

    /** Names that people give to columns; common practice, no source. */
    private static final Map<String, List<String>> CALLED = Map.ofEntries(
            Map.entry("genotypes.code", List.of("number", "no", "nr", "seedling", "selection", "genotype", "tree no")),
            Map.entry("genotypes.name", List.of("variety", "cultivar")),
            Map.entry("genotypes.seed_parent", List.of("mother", "seed parent", "female", "female parent", "dam")),
            Map.entry("genotypes.pollen_parent", List.of("father", "pollen parent", "male", "male parent", "sire")),
            Map.entry("genotypes.year", List.of("year of cross", "sown")),
            Map.entry("plants.tag", List.of("label", "tree", "plant")),
            Map.entry("plants.rootstock", List.of("stock", "root stock")),
            Map.entry("plants.made_on", List.of("planted", "planted on", "grafted", "grafted on")),
            Map.entry("places.block", List.of("field", "plot")),
            Map.entry("places.place", List.of("position", "pos", "tree in row")),
            Map.entry("notes.text", List.of("remark", "remarks", "comment", "comments", "notes")));

    private final Map<Integer, Target> targets = new LinkedHashMap<>();
    private final List<String> header;

    private Mapping(List<String> header) {
        this.header = header;
    }

    /** A column or field that is not there. */
    public static final class Unknown extends Exception {

        private static final long serialVersionUID = 1;

        Unknown(String message) {
            super(message);
        }
    }

    /**
     * @param meant the table of columns whose names two tables have
     * @param said the person's own word, a column's name to a field; an empty field keeps a column as a note
     */
    public static Mapping of(List<String> header, Kind<?> meant, Map<String, String> said) throws Unknown {
        Mapping mapping = new Mapping(header);
        Set<Integer> decided = new HashSet<>();
        for (Map.Entry<String, String> one : said.entrySet()) {
            int place = mapping.place(one.getKey());
            decided.add(place);
            if (!one.getValue().isBlank()) {
                mapping.targets.put(place, target(one.getValue().strip(), meant));
            }
        }
        for (int i = 0; i < header.size(); i++) {
            if (!decided.contains(i)) {
                mapping.guess(i, meant);
            }
        }
        return mapping;
    }

    private static Target target(String field, Kind<?> meant) throws Unknown {
        return Target.of(field, meant)
                .orElseThrow(() -> new Unknown("'" + field + "' is no field; name it as "
                        + meant + ".COLUMN, another table's as TABLE.COLUMN, or a score as score:TRAIT. " + meant
                        + " has: "
                        + String.join(
                                ", ",
                                meant.columns().stream().map(Object::toString).toList())));
    }

    private int place(String column) throws Unknown {
        for (int i = 0; i < header.size(); i++) {
            if (header.get(i).equalsIgnoreCase(column.strip())) {
                return i;
            }
        }
        throw new Unknown("the list has no column '" + column + "'; it has: " + String.join(", ", header));
    }

    private void guess(int place, Kind<?> meant) {
        String name = header.get(place)
                .toLowerCase(Locale.ROOT)
                .replace('_', ' ')
                .replaceAll("[.:#]+$", "")
                .strip();
        Optional<Target> target = Target.of(name.replace(' ', '_'), meant).or(() -> called(name, meant));
        target.filter(free -> targets.values().stream().noneMatch(free::equals))
                .ifPresent(free -> targets.put(place, free));
    }

    private static Optional<Target> called(String name, Kind<?> meant) {
        return CALLED.entrySet().stream()
                .filter(entry -> entry.getValue().contains(name))
                .findFirst()
                .map(Map.Entry::getKey)
                .or(() -> elsewhere(name.replace(' ', '_')))
                .flatMap(field -> Target.of(field, meant));
    }

    /** A column that only one of the tables has which a list of plants may fill. */
    private static Optional<String> elsewhere(String column) {
        List<Kind<?>> having = List.<Kind<?>>of(Kinds.GENOTYPES, Kinds.PLANTS, Kinds.PLACES).stream()
                .filter(kind -> kind.column(column).isPresent())
                .toList();
        return having.size() == 1 ? Optional.of(having.get(0) + "." + column) : Optional.empty();
    }

    /** By the place of the column in the list. */
    Map<Integer, Target> targets() {
        return targets;
    }

    Collection<Kind<?>> kinds() {
        return targets.values().stream().<Kind<?>>map(Target::kind).distinct().toList();
    }

    /** For a person: each column of the list, and where it goes. */
    public Map<String, Object> told() {
        Map<String, Object> told = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
            if (!header.get(i).isEmpty()) {
                told.put(header.get(i), targets.containsKey(i) ? targets.get(i).toString() : "notes");
            }
        }
        return told;
    }
}
