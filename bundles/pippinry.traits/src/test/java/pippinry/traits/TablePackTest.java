package pippinry.traits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class TablePackTest {

    private final CropPack small = new TablePack("small", TablePackTest.class, "/small");
    private final CropPack broken = new TablePack("broken", TablePackTest.class, "/broken");

    @Test
    void readsWhatIsThereAndIsEmptyElsewhere() {
        PublishedRate set = small.rate("set").orElseThrow();
        assertEquals(0.5, set.typical());
        assertEquals("one, two", set.note());
        assertEquals("looked up: somewhere", set.provenance().words());
        assertEquals(List.of(), small.traits());
        assertTrue(small.rate("emergence").isEmpty());
    }

    @Test
    void allelesOfOneSeriesStandTogether() {
        assertEquals(
                List.of("apple", "pear"),
                small.series().stream().map(AlleleSeries::name).toList());
        AlleleSeries apple = small.series("").orElseThrow();
        assertEquals(0.3, apple.frequencies().get("S3"), 1e-12);
        SAllele mutant = small.series("pear").orElseThrow().allele("S4sm");
        assertTrue(mutant.selfCompatible());
        assertTrue(apple.alleles().stream().noneMatch(SAllele::selfCompatible));
    }

    @Test
    void faultsNameFileLineColumnValueAndWhatWasExpected() {
        refused(CropPack::rates, "Pack broken: rates.csv, line 2, column typical: 'abc' where a number was expected");
        refused(
                CropPack::cautions,
                "Pack broken: cautions.csv, line 2, column basis: 'common practice' where one of looked up,");
        refused(CropPack::traits, "Pack broken: traits.csv, line 2: expected states as '1 weak|3 medium', not '2'");
        refused(CropPack::thresholds, "Pack broken: thresholds.csv, line 2: expected a source");
    }

    private void refused(Function<CropPack, ?> table, String message) {
        PackRefused refused = assertThrows(PackRefused.class, () -> table.apply(broken));
        assertTrue(refused.getMessage().startsWith(message), refused.getMessage());
    }
}
