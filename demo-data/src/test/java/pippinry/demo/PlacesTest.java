package pippinry.demo;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pippinry.model.value.PartialDate;

class PlacesTest {

    private static LocalDate from(NamedCsvRecord row) {
        return PartialDate.parse(row.getField("from")).latest();
    }

    private static LocalDate to(NamedCsvRecord row) {
        return row.getField("to").isEmpty()
                ? LocalDate.MAX
                : PartialDate.parse(row.getField("to")).earliest();
    }

    @Test
    void noPlaceIsTakenTwiceAtATime() {
        Map<String, List<NamedCsvRecord>> byPlace = Files.now("places").stream()
                .collect(Collectors.groupingBy(
                        row -> row.getField("block") + "/" + row.getField("row") + "/" + row.getField("place")));
        byPlace.forEach(PlacesTest::assertOneAfterAnother);
    }

    private static void assertOneAfterAnother(String place, List<NamedCsvRecord> stays) {
        for (NamedCsvRecord one : stays) {
            for (NamedCsvRecord other : stays) {
                boolean overlap = from(one).isBefore(to(other)) && from(other).isBefore(to(one));
                assertFalse(one != other && overlap, () -> place + ": " + one + " and " + other);
            }
        }
    }

    @Test
    void everyPlaceLiesInItsBlock() {
        Map<String, NamedCsvRecord> blocks =
                Files.now("blocks").stream().collect(Collectors.toMap(row -> row.getField("block"), row -> row));
        for (NamedCsvRecord row : Files.now("places")) {
            NamedCsvRecord block = blocks.get(row.getField("block"));
            assertTrue(
                    within(row, "row", block, "rows") && within(row, "place", block, "places_per_row"), row.toString());
        }
    }

    private static boolean within(NamedCsvRecord row, String column, NamedCsvRecord block, String most) {
        int number = Integer.parseInt(row.getField(column));
        return number >= 1 && number <= Integer.parseInt(block.getField(most));
    }

    @Test
    void onlyTheLivingStandSomewhere() {
        Map<String, String> status = Files.now("plants").stream()
                .collect(Collectors.toMap(row -> row.getField("tag"), row -> row.getField("status")));
        Files.now("places").stream()
                .filter(row -> row.getField("to").isEmpty())
                .forEach(row -> assertTrue(status.get(row.getField("plant")).equals("alive"), row.toString()));
    }

    @Test
    void blocksLieOnTheirLandWithoutOverlap() {
        List<NamedCsvRecord> blocks = Files.now("blocks");
        for (NamedCsvRecord one : blocks) {
            assertTrue(edge(one, "x") <= 50 && edge(one, "y") <= 80, one.toString());
            for (NamedCsvRecord other : blocks) {
                boolean apart = edge(one, "x") < number(other, "x_m")
                        || edge(other, "x") < number(one, "x_m")
                        || edge(one, "y") < number(other, "y_m")
                        || edge(other, "y") < number(one, "y_m");
                assertTrue(one == other || apart, one.getField("block") + " and " + other.getField("block"));
            }
        }
    }

    /** Rows run east, so places spread along x and rows along y. */
    private static double edge(NamedCsvRecord block, String axis) {
        return axis.equals("x")
                ? number(block, "x_m") + (number(block, "places_per_row") - 1) * number(block, "place_spacing_m")
                : number(block, "y_m") + (number(block, "rows") - 1) * number(block, "row_spacing_m");
    }

    private static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }
}
