package pippinry.traits.apple.internal;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pippinry.traits.AlleleSeries;
import pippinry.traits.Basis;
import pippinry.traits.CropPack;
import pippinry.traits.Provenance;
import pippinry.traits.PublishedRate;
import pippinry.traits.ReferenceGenotype;
import pippinry.traits.SGenotype;
import pippinry.traits.TraitDefinition;

class ApplePackTest {

    private static final List<String> TABLES = List.of(
            "alleles",
            "calendar",
            "cautions",
            "effects",
            "linkages",
            "loci",
            "parentage",
            "rates",
            "reference-genotypes",
            "self-fertility",
            "stocks",
            "thresholds",
            "traits");

    private final CropPack apple = new ApplePack();

    @Test
    void everyTableHasRowsAndEveryRowSaysWhatItRestsOn() {
        List<Stream<Provenance>> tables = List.of(
                apple.traits().stream().map(TraitDefinition::provenance),
                apple.loci().stream().map(locus -> locus.provenance()),
                apple.effects().stream().map(effect -> effect.provenance()),
                apple.linkages().stream().map(linkage -> linkage.provenance()),
                apple.referenceGenotypes().stream().map(ReferenceGenotype::provenance),
                apple.parentages().stream().map(parentage -> parentage.provenance()),
                apple.selfFertility().stream().map(fertility -> fertility.provenance()),
                apple.rates().stream().map(PublishedRate::provenance),
                apple.stocks().stream().map(stock -> stock.provenance()),
                apple.calendar().stream().map(task -> task.provenance()),
                apple.thresholds().stream().map(threshold -> threshold.provenance()),
                apple.cautions().stream().map(caution -> caution.provenance()));
        for (Stream<Provenance> table : tables) {
            List<Provenance> rows = table.toList();
            assertFalse(rows.isEmpty());
            rows.forEach(row -> assertTrue(
                    row.basis() == Basis.COMMON_PRACTICE || !row.source().isBlank()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"basis", "source"})
    void noRowIsMarkedDoubtful(String column) throws IOException {
        for (String table : TABLES) {
            for (NamedCsvRecord row : rows("/tables/" + table + ".csv")) {
                assertFalse(row.getField(column).toLowerCase().contains("doubtful"), table + ": " + row);
            }
        }
    }

    @Test
    void doubtfulSGenotypesOfTheReferenceStayOut() throws IOException {
        Set<String> doubtful = named("/genetics/s-alleles.csv", "cultivar", row -> doubtful(row) && isApple(row));
        assertEquals(Set.of("Discovery", "Macoun", "Liberty"), doubtful);
        apple.referenceGenotypes().stream()
                .filter(row -> row.locus().equals("S"))
                .forEach(row -> assertFalse(doubtful.contains(row.cultivar()), row.cultivar()));
        Set<String> sure = named("/genetics/s-alleles.csv", "cultivar", row -> !doubtful(row) && isApple(row));
        assertEquals(
                sure,
                apple.referenceGenotypes().stream()
                        .filter(row -> row.locus().equals("S"))
                        .map(ReferenceGenotype::cultivar)
                        .collect(Collectors.toSet()));
    }

    @Test
    void doubtfulParentagesAndRatesOfTheReferenceStayOut() throws IOException {
        Set<String> doubtful = named("/genetics/pedigrees.csv", "name", ApplePackTest::doubtful);
        assertEquals(Set.of("PRI 14-510"), doubtful);
        assertTrue(apple.parentages().stream().noneMatch(row -> doubtful.contains(row.cultivar())));
        assertTrue(apple.parentages().size() > 150);
        // funnel.csv marks the loss from emergence to planting out and the shares kept at each stage as doubtful.
        for (String absent : List.of("damping", "kept for a second look", "stage 2", "best not used")) {
            assertTrue(apple.rates().stream().noneMatch(row -> row.what().contains(absent)), absent);
        }
    }

    @Test
    void whatNamesATraitOrLocusFindsIt() {
        apple.effects().forEach(effect -> {
            assertTrue(apple.locus(effect.locus()).isPresent(), effect.locus());
            assertTrue(apple.trait(effect.trait()).isPresent(), effect.trait());
        });
        apple.linkages().forEach(linkage -> {
            assertTrue(apple.locus(linkage.one()).isPresent(), linkage.one());
            assertTrue(apple.locus(linkage.other()).isPresent(), linkage.other());
        });
        apple.referenceGenotypes()
                .forEach(row -> assertTrue(apple.locus(row.locus()).isPresent(), row.locus()));
        assertEquals("Md-ACS1", apple.locus("ACS1").orElseThrow().name());
        assertEquals("Rvi6", apple.locus("Vf").orElseThrow().name());
    }

    @Test
    void everySGenotypeReadsInItsSeriesAndIsOfOneLength() {
        AlleleSeries series = apple.series("").orElseThrow();
        apple.referenceGenotypes().stream()
                .filter(row -> row.locus().equals("S"))
                .forEach(row -> {
                    SGenotype genotype =
                            assertDoesNotThrow(() -> SGenotype.parse(row.alleles(), series), row.cultivar());
                    assertTrue(genotype.ploidy() == 2 || genotype.ploidy() == 3);
                });
        assertEquals(
                1, series.frequencies().values().stream().mapToDouble(f -> f).sum(), 1e-12);
        assertEquals(0.18, series.frequencies().get("S7"));
    }

    @Test
    void codesStandOnlyOnceAndValuesLieWithinTheirScale() {
        assertEquals(
                apple.traits().size(),
                apple.traits().stream().map(TraitDefinition::code).distinct().count());
        assertEquals(
                apple.rates().size(),
                apple.rates().stream().map(PublishedRate::name).distinct().count());
        for (TraitDefinition trait : apple.traits()) {
            trait.target().ifPresent(target -> assertTrue(trait.plausible(target), trait.code()));
        }
        TraitDefinition weight = apple.trait("fruit.weight_g").orElseThrow();
        assertTrue(weight.plausible(180) && !weight.plausible(2) && weight.allows(2) && !weight.allows(4000));
    }

    @ParameterizedTest
    @CsvSource({"set, 0.0667, 0.5667, 0.8333", "seeds_per_fruit, 4.5, 7.1, 8.6", "emergence, 0.54, 0.805, 0.87"})
    void planningRatesAreThoseOfTheReference(String name, double low, double typical, double high) {
        PublishedRate rate = apple.rate(name).orElseThrow();
        assertEquals(low, rate.low().orElseThrow());
        assertEquals(typical, rate.typical());
        assertEquals(high, rate.high().orElseThrow());
    }

    @Test
    void cautionsCoverBladesPollenAndWood() {
        Set<String> topics =
                apple.cautions().stream().map(caution -> caution.topic()).collect(Collectors.toSet());
        assertTrue(topics.containsAll(Set.of("blades", "pollen", "budwood", "variety rights", "ladders", "seeds")));
    }

    private static boolean doubtful(NamedCsvRecord row) {
        return row.getField("certainty").equals("doubtful");
    }

    private static boolean isApple(NamedCsvRecord row) {
        return row.getField("crop").equals("apple");
    }

    private static Set<String> named(String file, String column, Function<NamedCsvRecord, Boolean> which)
            throws IOException {
        return rows(file).stream()
                .filter(which::apply)
                .map(row -> row.getField(column))
                .collect(Collectors.toSet());
    }

    private static List<NamedCsvRecord> rows(String resource) throws IOException {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder()
                .ofNamedCsvRecord(ApplePackTest.class.getResourceAsStream(resource), StandardCharsets.UTF_8)) {
            return reader.stream().toList();
        }
    }
}
