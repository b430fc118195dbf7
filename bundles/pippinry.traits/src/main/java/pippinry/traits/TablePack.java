package pippinry.traits;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import pippinry.model.record.Direction;

/**
 * A crop pack that is a folder of CSV tables beside a class. A table is read when it is first asked for; one that is not
 * there is empty.
 */
public class TablePack implements CropPack {

    private final String crop;
    private final Class<?> beside;
    private final String folder;
    private final Map<String, List<?>> read = new ConcurrentHashMap<>();

    /**
     * A pack in the bundle of a class.
     *
     * @param beside a class of the bundle that holds the tables
     * @param folder of the tables, as a resource name from the root of the bundle, such as {@code /tables}
     */
    public TablePack(String crop, Class<?> beside, String folder) {
        this.crop = crop;
        this.beside = beside;
        this.folder = folder;
    }

    @Override
    public final String crop() {
        return crop;
    }

    @Override
    public List<TraitDefinition> traits() {
        return table("traits", TablePack::trait);
    }

    @Override
    public List<Locus> loci() {
        return table("loci", TablePack::locus);
    }

    @Override
    public List<LocusEffect> effects() {
        return table(
                "effects",
                row -> new LocusEffect(
                        row.needed("locus"),
                        row.needed("trait"),
                        row.yes("decides"),
                        row.number("shown_low"),
                        row.number("shown_high"),
                        row.number("otherwise_low"),
                        row.number("otherwise_high"),
                        row.provenance(),
                        row.text("note")));
    }

    @Override
    public List<Linkage> linkages() {
        return table(
                "linkages",
                row -> new Linkage(
                        row.needed("locus_a"),
                        row.needed("locus_b"),
                        row.text("chromosome"),
                        row.number("cm"),
                        row.text("kind"),
                        row.provenance(),
                        row.text("note")));
    }

    @Override
    public List<AlleleSeries> series() {
        return once("series", any -> readSeries());
    }

    @Override
    public List<ReferenceGenotype> referenceGenotypes() {
        return table(
                "reference-genotypes",
                row -> new ReferenceGenotype(
                        row.needed("cultivar"),
                        row.needed("locus"),
                        row.needed("alleles"),
                        row.text("series"),
                        row.provenance(),
                        row.text("note")));
    }

    @Override
    public List<KnownParentage> parentages() {
        return table(
                "parentage",
                row -> new KnownParentage(
                        row.needed("cultivar"),
                        row.optional("seed_parent"),
                        row.optional("pollen_parent"),
                        row.optional("sport_of"),
                        row.yes("direction_known"),
                        row.whole("ploidy"),
                        row.text("crossed"),
                        row.text("released"),
                        row.provenance(),
                        row.text("note")));
    }

    @Override
    public List<SelfFertility> selfFertility() {
        return table(
                "self-fertility",
                row -> new SelfFertility(
                        row.needed("cultivar"),
                        row.needed("degree"),
                        row.text("condition"),
                        row.provenance(),
                        row.text("note")));
    }

    @Override
    public List<PublishedRate> rates() {
        return table(
                "rates",
                row -> new PublishedRate(
                        row.needed("rate"),
                        row.needed("what"),
                        row.number("low"),
                        row.neededNumber("typical"),
                        row.number("high"),
                        row.neededWhole("values"),
                        row.needed("unit"),
                        row.provenance(),
                        row.text("note")));
    }

    @Override
    public List<StockFact> stocks() {
        return table(
                "stocks",
                row -> new StockFact(
                        row.needed("subject"),
                        row.needed("quantity"),
                        row.number("low"),
                        row.number("high"),
                        row.text("unit"),
                        row.text("as_printed"),
                        row.provenance()));
    }

    @Override
    public List<CalendarTask> calendar() {
        return table(
                "calendar",
                row -> new CalendarTask(
                        row.neededWhole("program_year"),
                        row.neededWhole("from_month"),
                        row.neededWhole("to_month"),
                        row.neededWhole("from_month_south"),
                        row.neededWhole("to_month_south"),
                        row.needed("subject"),
                        row.needed("task"),
                        row.text("record"),
                        row.text("what_goes_wrong"),
                        row.text("decision"),
                        row.provenance()));
    }

    @Override
    public List<Threshold> thresholds() {
        return table(
                "thresholds",
                row -> new Threshold(
                        row.needed("topic"),
                        row.needed("item"),
                        row.number("low"),
                        row.number("high"),
                        row.text("unit"),
                        row.provenance(),
                        row.text("note")));
    }

    @Override
    public List<Caution> cautions() {
        return table("cautions", row -> new Caution(row.needed("topic"), row.needed("caution"), row.provenance()));
    }

    private static TraitDefinition trait(TableRow row) {
        return new TraitDefinition(
                row.needed("code"),
                row.needed("name"),
                row.word(TraitScale.class, "scale"),
                row.list("states").stream().map(TablePack::state).toList(),
                row.number("low"),
                row.number("high"),
                row.number("plausible_low"),
                row.number("plausible_high"),
                row.text("unit"),
                row.optionalWord(Direction.class, "direction"),
                row.number("target"),
                row.needed("subject"),
                row.text("when"),
                row.text("how"),
                row.text("standard"),
                row.provenance(),
                row.text("note"));
    }

    private static TraitState state(String text) {
        int blank = text.indexOf(' ');
        if (blank < 0) {
            throw new IllegalArgumentException("states as '1 weak|3 medium', not '" + text + "'");
        }
        return new TraitState(text.substring(0, blank), text.substring(blank + 1));
    }

    private static Locus locus(TableRow row) {
        return new Locus(
                row.needed("locus"),
                row.list("synonyms"),
                row.needed("seen"),
                row.word(Dominance.class, "dominance"),
                row.text("effect_allele"),
                row.text("other_allele"),
                row.number("frequency").orElse(0.5),
                row.text("frequency_ground"),
                row.text("chromosome"),
                row.text("position"),
                row.text("markers"),
                row.text("known_carriers"),
                row.provenance(),
                row.text("note"));
    }

    /** Rows of alleles.csv by series, in the order in which the series first stand there. */
    private List<AlleleSeries> readSeries() {
        Map<String, List<AlleleRow>> bySeries = table("alleles", AlleleRow::of).stream()
                .collect(Collectors.groupingBy(AlleleRow::series, LinkedHashMap::new, Collectors.toList()));
        List<AlleleSeries> all = new ArrayList<>();
        bySeries.forEach((name, rows) -> {
            Map<String, Double> frequencies = new TreeMap<>();
            rows.forEach(row ->
                    row.frequency().ifPresent(f -> frequencies.put(row.allele().name(), f)));
            all.add(AlleleSeries.closed(
                    name, rows.stream().map(AlleleRow::allele).toList(), frequencies));
        });
        return List.copyOf(all);
    }

    /** The rows of a table, made into records. */
    private <T> List<T> table(String name, Function<TableRow, T> maker) {
        return once(name, any -> read(name + ".csv", maker));
    }

    @SuppressWarnings("unchecked")
    private <T> List<T> once(String name, Function<String, List<T>> reader) {
        List<?> known = read.get(name);
        if (known == null) {
            known = reader.apply(name);
            read.putIfAbsent(name, known);
        }
        return (List<T>) known;
    }

    private <T> List<T> read(String file, Function<TableRow, T> maker) {
        try (InputStream in = beside.getResourceAsStream(folder + "/" + file)) {
            return in == null ? List.of() : read(file, in, maker);
        } catch (IOException e) {
            throw new PackRefused("Pack " + crop + ": " + file + " cannot be read: " + e.getMessage(), e);
        }
    }

    private <T> List<T> read(String file, InputStream in, Function<TableRow, T> maker) throws IOException {
        List<T> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> records =
                CsvReader.builder().detectBomHeader(true).ofNamedCsvRecord(in, StandardCharsets.UTF_8)) {
            for (NamedCsvRecord record : records) {
                rows.add(new TableRow("Pack " + crop + ": " + file, record).make(maker));
            }
        }
        return List.copyOf(rows);
    }
}
