package pippinry.exchange.internal.bring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import pippinry.exchange.internal.bring.OwnList.ListRow;
import pippinry.model.Change;
import pippinry.model.number.Reading;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Reads the rows of a list: one row may make a genotype, its plant, the place of that, scores and notes. */
final class ListRows {

    private static final Pattern COPY = Pattern.compile(".*\\d[A-Za-z]");
    /** What people put where they have nothing to say. */
    private static final List<String> NOTHING = List.of("", "-", "--", "?", "n/a", "na", "n.a.");

    private final OwnList list;
    private final Mapping mapping;
    private final Kind<?> meant;
    private final RowMeaning meaning;

    ListRows(OwnList list, Mapping mapping, Kind<?> meant, RowMeaning meaning) {
        this.list = list;
        this.mapping = mapping;
        this.meant = meant;
        this.meaning = meaning;
    }

    /** The number of the row: of its genotype, else of its plant, else of what the list is about. */
    Optional<String> number(ListRow row) throws Unclear {
        for (String field : List.of(
                "genotypes.code", "plants.tag", meant + "." + meant.columns().get(0))) {
            for (Map.Entry<Integer, Target> target : mapping.targets().entrySet()) {
                String text = row.cells().get(target.getKey()).strip();
                if (target.getValue().toString().equals(field) && !text.isEmpty()) {
                    return Optional.of(unchecked(text));
                }
            }
        }
        return Optional.empty();
    }

    private static String unchecked(String text) throws Unclear {
        if (text.indexOf('=') < 0) {
            return Known.full(text);
        }
        try {
            Reading reading = Reading.of(text);
            if (!reading.isValid()) {
                throw new Unclear("the check character of '" + text + "' does not fit; " + reading + " would");
            }
            return Known.full(reading.number());
        } catch (IllegalArgumentException e) {
            throw new Unclear("'" + text + "'; expected " + e.getMessage());
        }
    }

    /** Lets other rows name this one. */
    void announce(Known known, ListRow row, String number) {
        known.add(meant, number, "");
        if (mapping.kinds().contains(Kinds.GENOTYPES)) {
            known.add(Kinds.GENOTYPES, genotype(number), name(row));
        }
        if (mapping.kinds().contains(Kinds.PLANTS)) {
            known.add(Kinds.PLANTS, tag(number), "");
        }
    }

    private String name(ListRow row) {
        return mapping.targets().entrySet().stream()
                .filter(target -> target.getValue().toString().equals("genotypes.name"))
                .map(target -> row.cells().get(target.getKey()))
                .findFirst()
                .orElse("");
    }

    /** New rows and completed ones. */
    List<Change<?>> read(ListRow row) throws Unclear {
        String number = number(row).orElseThrow(() -> new Unclear("there is no number in it"));
        Map<Kind<?>, Map<String, String>> texts = texts(row, number);
        List<Change<?>> changes = new ArrayList<>();
        for (Map.Entry<Kind<?>, Map<String, String>> one : texts.entrySet()) {
            changes.add(change(one.getKey(), one.getValue()));
        }
        for (Map<String, String> score : scores(row, subject(number))) {
            changes.add(change(Kinds.SCORES, score));
        }
        for (String note : notes(row)) {
            changes.add(change(Kinds.NOTES, Map.of("subject", subject(number), "text", note)));
        }
        return changes;
    }

    private <T extends Record> Change<T> change(Kind<T> kind, Map<String, String> texts) throws Unclear {
        return new Change<>(kind, java.util.OptionalInt.empty(), Optional.of(meaning.read(kind, texts)));
    }

    private Map<Kind<?>, Map<String, String>> texts(ListRow row, String number) {
        Map<Kind<?>, Map<String, String>> texts = new LinkedHashMap<>();
        for (Kind<?> kind : Kinds.ALL) {
            Map<String, String> some = new LinkedHashMap<>();
            mapping.targets().forEach((place, target) -> {
                String text = row.cells().get(place).strip();
                if (target.kind() == kind && target.trait().isEmpty() && !text.isEmpty() && kind != Kinds.NOTES) {
                    some.put(target.column().name(), text);
                }
            });
            if (!some.isEmpty()) {
                join(kind, some, number);
                texts.put(kind, some);
            }
        }
        return texts;
    }

    /** Rows of several tables that come from one row belong together by their number. */
    private void join(Kind<?> kind, Map<String, String> texts, String number) {
        if (kind == Kinds.GENOTYPES) {
            texts.put("code", genotype(number));
        } else if (kind == Kinds.PLANTS) {
            texts.put("tag", tag(number));
            if (mapping.kinds().contains(Kinds.GENOTYPES)) {
                texts.putIfAbsent("genotype", genotype(number));
            }
        } else if (kind == Kinds.PLACES) {
            texts.putIfAbsent("plant", tag(number));
        } else if (kind == meant) {
            texts.put(kind.columns().get(0).name(), number);
        } else if (kind.column("subject").isPresent()) {
            texts.putIfAbsent("subject", subject(number));
        }
    }

    private static boolean isCopy(String number) {
        return COPY.matcher(number).matches();
    }

    private static String genotype(String number) {
        return isCopy(number) ? number.substring(0, number.length() - 1) : number;
    }

    private static String tag(String number) {
        return isCopy(number) ? number : number + "A";
    }

    /** Scores and notes are about the plant, if the list tells of plants. */
    private String subject(String number) {
        if (mapping.kinds().contains(Kinds.PLANTS)) {
            return tag(number);
        }
        return mapping.kinds().contains(Kinds.GENOTYPES) ? genotype(number) : number;
    }

    private List<Map<String, String>> scores(ListRow row, String subject) {
        List<Map<String, String>> scores = new ArrayList<>();
        mapping.targets().forEach((place, target) -> {
            String text = row.cells().get(place).strip();
            if (target.trait().isPresent() && !NOTHING.contains(text.toLowerCase(java.util.Locale.ROOT))) {
                String value = text.matches("[-+]?\\d+,\\d+") ? text.replace(',', '.') : text;
                scores.add(Map.of("subject", subject, "trait", target.trait().get(), "value", value));
            }
        });
        return scores;
    }

    private List<String> notes(ListRow row) {
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            String text = row.cells().get(i).strip();
            Target target = mapping.targets().get(i);
            if (!text.isEmpty() && target == null) {
                notes.add((list.header().get(i).isEmpty() ? "" : list.header().get(i) + ": ") + text);
            } else if (!text.isEmpty() && target.kind() == Kinds.NOTES) {
                notes.add(text);
            }
        }
        return notes;
    }

    /** The row as it stands in the list. */
    String original(ListRow row) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < row.cells().size(); i++) {
            String cell = row.cells().get(i);
            if (!cell.isBlank()) {
                String name = list.header().get(i);
                text.append(text.isEmpty() ? "" : "; ")
                        .append(name.isEmpty() ? "" : name + ": ")
                        .append(cell);
            }
        }
        return text.toString();
    }
}
