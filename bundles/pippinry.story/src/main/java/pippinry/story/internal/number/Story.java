package pippinry.story.internal.number;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Column;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/**
 * Everything on file about one number: its own record, and each record that speaks of it or of what belongs to it - the
 * plants of a genotype and their samples, the pollinations and seed lots of a cross.
 */
public final class Story {

    private final Program program;
    private final Looked.Found about;
    private final Set<String> family = new LinkedHashSet<>();
    private final Map<Kind<?>, List<Record>> records = new LinkedHashMap<>();

    public Story(Program program, Looked.Found about) {
        this.program = program;
        this.about = about;
        family.add(about.key());
        gatherFamily();
        Kinds.ALL.stream().filter(kind -> kind != Kinds.GENOTYPES).forEach(this::gather);
        sort(Kinds.SCORES, Comparator.comparing(Score::trait).thenComparing(Score::date, EARLIEST));
        sort(Kinds.PLACES, Comparator.comparing(Occupancy::from, EARLIEST));
    }

    /** What has no date stands first. */
    private static final Comparator<Optional<PartialDate>> EARLIEST =
            Comparator.comparing(date -> date.orElse(null), Comparator.nullsFirst(Comparator.naturalOrder()));

    public Program program() {
        return program;
    }

    public Looked.Found about() {
        return about;
    }

    public String number() {
        return about.key();
    }

    /** The record filed under the number; empty for a place. */
    public Optional<Record> record() {
        return about.kind()
                .flatMap(kind -> program.table(kind).find(about.key()).map(Row::value));
    }

    /** The genotype that the number names, or that the plant has. */
    public Optional<Genotype> genotype() {
        return record().flatMap(record -> record instanceof Genotype genotype
                ? Optional.of(genotype)
                : record instanceof Plant plant
                        ? plant.genotype().flatMap(code -> program.find(Kinds.GENOTYPES, code))
                        : Optional.empty());
    }

    /** Codes of the number and of all that belongs to it. */
    public Set<String> family() {
        return family;
    }

    @SuppressWarnings("unchecked")
    public <T extends Record> List<T> records(Kind<T> kind) {
        return (List<T>) records.getOrDefault(kind, List.of());
    }

    /** The kinds of which there are records, in the order of the model. */
    public Set<Kind<?>> kinds() {
        return records.keySet();
    }

    private void gatherFamily() {
        if (is(Kinds.GENOTYPES)) {
            program.table(Kinds.PLANTS).citing(about.key()).stream()
                    .map(Row::value)
                    .filter(plant -> plant.genotype().map(Code::text).equals(Optional.of(about.key())))
                    .forEach(plant -> family.add(plant.tag().text()));
        }
        if (is(Kinds.CROSSES)) {
            addCiting(Kinds.POLLINATIONS);
            addCiting(Kinds.SEEDLOTS);
        }
        if (is(Kinds.GENOTYPES) || is(Kinds.PLANTS)) {
            addCiting(Kinds.SAMPLES);
        }
    }

    private boolean is(Kind<?> kind) {
        return about.kind().equals(Optional.of(kind));
    }

    private <T extends Record> void addCiting(Kind<T> kind) {
        for (String code : List.copyOf(family)) {
            program.table(kind).citing(code).forEach(row -> kind.keyOf(row.value())
                    .ifPresent(family::add));
        }
    }

    private <T extends Record> void gather(Kind<T> kind) {
        Map<Integer, T> rows = new TreeMap<>();
        for (String code : family) {
            program.table(kind).citing(code).forEach(row -> rows.put(row.id(), row.value()));
            if (!kind.key().isEmpty()) {
                program.table(kind).find(code).ifPresent(row -> rows.put(row.id(), row.value()));
            }
        }
        for (String column : List.of("batch", "where")) {
            kind.column(column).filter(Column::isText).ifPresent(text -> gatherWritten(kind, text, rows));
        }
        if (kind == Kinds.PLACES && about.kind().isEmpty()) {
            gatherPlace(rows);
        }
        rows.values().removeIf(row -> record().equals(Optional.of(row)));
        if (!rows.isEmpty()) {
            records.put(kind, new ArrayList<>(rows.values()));
        }
    }

    /** A batch or place stands there as the person's own words, not as a reference. */
    private <T extends Record> void gatherWritten(Kind<T> kind, Column column, Map<Integer, T> rows) {
        program.table(kind).forEach(row -> {
            if (family.contains(kind.cell(row.value(), column))) {
                rows.put(row.id(), row.value());
            }
        });
    }

    @SuppressWarnings("unchecked")
    private <T extends Record> void gatherPlace(Map<Integer, T> rows) {
        String block = about.key().substring(0, about.key().indexOf('/'));
        program.table(Kinds.PLACES).citing(block).stream()
                .filter(row -> place(row.value()).equals(about.key()))
                .forEach(row -> rows.put(row.id(), (T) row.value()));
    }

    /** As {@code block/row/place}. */
    public static String place(Occupancy occupancy) {
        return occupancy.block().map(Code::text).orElse("?") + "/" + occupancy.row() + "/" + occupancy.place();
    }

    private <T extends Record> void sort(Kind<T> kind, Comparator<T> order) {
        if (records.containsKey(kind)) {
            List<T> rows = new ArrayList<>(records(kind));
            rows.sort(order);
            records.put(kind, new ArrayList<>(rows));
        }
    }

    /** Where its plants stand, or which plants stand on the place: those with no day on which they left. */
    public List<Occupancy> placesNow() {
        return records(Kinds.PLACES).stream()
                .filter(occupancy -> occupancy.to().isEmpty())
                .toList();
    }

    /** How many genotypes on file have it as a parent, by what they have it as. */
    public Map<String, Integer> offspring() {
        Map<String, Integer> counts = new HashMap<>();
        if (is(Kinds.GENOTYPES)) {
            program.table(Kinds.GENOTYPES).citing(about.key()).forEach(row -> count(row.value(), counts));
        }
        return counts;
    }

    private void count(Genotype child, Map<String, Integer> counts) {
        boolean seed = child.seedParent().map(Code::text).equals(Optional.of(about.key()));
        boolean pollen = child.pollenParent().candidates().stream()
                .anyMatch(code -> code.text().equals(about.key()));
        if (seed) {
            counts.merge(AS_SEED_PARENT, 1, Integer::sum);
        }
        if (pollen) {
            boolean sure = child.pollenParent().candidates().size() == 1;
            counts.merge(sure ? AS_POLLEN_PARENT : PERHAPS, 1, Integer::sum);
        }
        if (child.sportOf().map(Code::text).equals(Optional.of(about.key()))) {
            counts.merge(SPORTS, 1, Integer::sum);
        }
    }

    static final String AS_SEED_PARENT = "as_seed_parent";
    static final String AS_POLLEN_PARENT = "as_pollen_parent";
    /** One of several candidates for the pollen parent. */
    static final String PERHAPS = "perhaps_as_pollen_parent";

    static final String SPORTS = "sports";
}
