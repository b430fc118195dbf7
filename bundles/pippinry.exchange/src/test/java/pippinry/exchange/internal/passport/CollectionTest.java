package pippinry.exchange.internal.passport;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.value.PartialDate;

class CollectionTest {

    private final Edit.Draft draft = Edit.by("IN", "test");

    private <T extends Record> CollectionTest with(Kind<T> kind, String... cells) throws CellRefused {
        Map<String, String> given = new HashMap<>();
        for (int i = 0; i < cells.length; i += 2) {
            given.put(cells[i], cells[i + 1]);
        }
        draft.put(kind, kind.read(column -> given.getOrDefault(column, "")));
        return this;
    }

    private Program program() throws Exception {
        return Program.empty().apply(draft.done(), Instant.EPOCH).program();
    }

    private static List<CsvRecord> practice(String file) throws IOException {
        try (CsvReader<CsvRecord> rows = CsvReader.builder()
                .ofCsvRecord(
                        new InputStreamReader(CollectionTest.class.getResourceAsStream("/practice/" + file), UTF_8))) {
            return rows.stream().toList();
        }
    }

    @Test
    void theHeaderIsThatOfTheSample() throws IOException {
        assertEquals(practice("mcpd-sample.csv").get(0).getFields(), Collection.header());
    }

    /** mcpd-sample.csv, second line, the seedling of a private grower. */
    @Test
    void aSeedlingOfAnOwnCrossIsWrittenAsInTheSample() throws Exception {
        with(Kinds.SETTINGS, "key", "crop", "value", "apple")
                .with(Kinds.SETTINGS, "key", "country", "value", "GBR")
                .with(Kinds.SETTINGS, "key", "breeder", "value", "A. Grower")
                .with(Kinds.SETTINGS, "key", "latitude", "value", "52.2000")
                .with(Kinds.SETTINGS, "key", "longitude", "value", "0.1200")
                .with(Kinds.SETTINGS, "key", "altitude_m", "value", "18")
                .with(Kinds.SETTINGS, "key", "coordinate_uncertainty_m", "value", "100")
                .with(Kinds.SETTINGS, "key", "coordinate_method", "value", "map")
                .with(Kinds.GENOTYPES, "code", "GOLD", "name", "Golden Delicious")
                .with(Kinds.GENOTYPES, "code", "PRI", "name", "Prima")
                .with(Kinds.CROSSES, "code", "26-014", "seed_parent", "GOLD", "pollen_parent", "PRI")
                .with(Kinds.SEEDLOTS, "code", "L26-014", "cross", "26-014", "harvested_on", "2026-10-04")
                .with(
                        Kinds.GENOTYPES,
                        "code",
                        "26-014-073",
                        "kind",
                        "seedling",
                        "seed_parent",
                        "GOLD",
                        "pollen_parent",
                        "PRI")
                .with(Kinds.PLANTS, "tag", "26-014-073A", "genotype", "26-014-073", "made_on", "2027-04");
        List<List<String>> rows = new Collection(program(), true).rows();
        assertEquals(List.of(practice("mcpd-sample.csv").get(1).getFields()), rows);
        List<String> without = new Collection(program(), false).rows().get(0);
        for (String field : List.of(
                "DECLATITUDE", "LATITUDE", "DECLONGITUDE", "LONGITUDE", "ELEVATION", "COORDDATUM", "COLLSITE")) {
            assertEquals("", without.get(Collection.header().indexOf(field)), field);
        }
        assertTrue(without.stream().noneMatch(cell -> cell.contains("52.2")));
    }

    @Test
    void aCultivarHasItsNamesItsDonorAndItsOldTags() throws Exception {
        with(Kinds.GENOTYPES, "code", "RIB", "name", "Ribston Pippin")
                .with(
                        Kinds.GENOTYPES,
                        "code",
                        "COX",
                        "name",
                        "Cox's Orange Pippin",
                        "kind",
                        "cultivar",
                        "crop",
                        "apple",
                        "seed_parent",
                        "RIB",
                        "pollen_parent",
                        "op")
                .with(Kinds.NAMES, "subject", "COX", "name", "Cox")
                .with(Kinds.NAMES, "subject", "COX", "name", "T-22", "kind", "old tag")
                .with(Kinds.PLANTS, "tag", "COX1", "genotype", "COX", "made_on", "2019-02-15")
                .with(
                        Kinds.MOVES,
                        "date",
                        "2019",
                        "subject",
                        "COX1",
                        "direction",
                        "in",
                        "person",
                        "a nursery; the old one");
        Map<String, String> cox = passports().get("COX=" + pippinry.model.number.CheckCharacter.of("COX"));
        assertEquals("Cox's Orange Pippin;Cox", cox.get("ACCENAME"));
        assertEquals("20190215", cox.get("ACQDATE"));
        assertEquals("500", cox.get("SAMPSTAT"));
        assertEquals("Ribston Pippin op", cox.get("ANCEST"));
        assertEquals("a nursery, the old one", cox.get("DONORNAME"));
        assertEquals(":T-22", cox.get("OTHERNUMB"));
        assertEquals("INSTCODE:private collection, no FAO code", cox.get("REMARKS"));
    }

    @Test
    void onlyWhatLivesHereHasAPassport() throws Exception {
        with(Kinds.GENOTYPES, "code", "FIE")
                .with(Kinds.GENOTYPES, "code", "ELS")
                .with(Kinds.GENOTYPES, "code", "PRI")
                .with(Kinds.PLANTS, "tag", "FIE1", "genotype", "FIE")
                .with(Kinds.PLANTS, "tag", "ELS1", "genotype", "ELS", "status", "grubbed");
        assertEquals(1, new Collection(program(), false).rows().size());
    }

    @ParameterizedTest
    @CsvSource({
        "seedling, 400",
        "selection, 410",
        "cultivar, 500",
        "rootstock, 500",
        "sport, 421",
        "species, 999",
        "'', 999"
    })
    void everyKindHasACodeOfTheStandardsList(String kind, String code) throws Exception {
        with(Kinds.GENOTYPES, "code", "X", "kind", kind).with(Kinds.PLANTS, "tag", "X1", "genotype", "X");
        Map<String, String> passport = passports().values().iterator().next();
        assertEquals(code, passport.get("SAMPSTAT"));
        assertEquals("20", passport.get("STORAGE"));
        Set<String> listed = practice("mcpd-codes.csv").stream()
                .map(row -> row.getField(0) + " " + row.getField(1))
                .collect(Collectors.toSet());
        assertTrue(
                listed.contains("SAMPSTAT " + code) && listed.contains("STORAGE 20") && listed.contains("COLLSRC 99"));
    }

    @ParameterizedTest
    @CsvSource({
        "A, B, '', A x B", "A, B|C, '', A x (B or C)", "A, self, '', A selfed", "A, op, '', A op",
        "A, '', '', A x unknown", "'', '', A, sport of A", "'', '', '', ''", "'', B, '', unknown x B"
    })
    void parentsAreWrittenSeedParentFirst(String seed, String pollen, String sport, String ancestry) throws Exception {
        with(Kinds.GENOTYPES, "code", "A")
                .with(Kinds.GENOTYPES, "code", "B")
                .with(Kinds.GENOTYPES, "code", "C")
                .with(Kinds.GENOTYPES, "code", "X", "seed_parent", seed, "pollen_parent", pollen, "sport_of", sport)
                .with(Kinds.PLANTS, "tag", "X1", "genotype", "X");
        assertEquals(ancestry, passports().values().iterator().next().get("ANCEST"));
    }

    @ParameterizedTest
    @CsvSource({"2027-04-05, 20270405", "2027-04, 202704--", "2027, 2027----", "about 2014, 2014----"})
    void whatIsNotKnownOfADateIsHyphens(String date, String written) {
        assertEquals(written, PassportDate.of(PartialDate.parse(date)));
    }

    @ParameterizedTest
    @CsvSource({
        "Malus floribunda, Malus floribunda",
        "Malus ×robusta, Malus ×robusta",
        "crab, ''",
        "Golden Delicious, ''"
    })
    void aSpeciesIsReadFromItsName(String name, String species) {
        assertEquals(
                species,
                Species.named(name)
                        .map(found -> found.genus() + " " + found.epithet())
                        .orElse(""));
    }

    private Map<String, Map<String, String>> passports() throws Exception {
        return new Collection(program(), false).rows().stream().collect(Collectors.toMap(row -> row.get(2), row -> {
            Map<String, String> fields = new HashMap<>();
            for (int i = 0; i < row.size(); i++) {
                fields.put(Collection.header().get(i), row.get(i));
            }
            return fields;
        }));
    }
}
