package pippinry.model.number;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNumbersTest {

    @ParameterizedTest
    @CsvSource({
        "26-014-073, 26-014-073, 0",
        "26-014-073, 26-014-037, 1", // neighbours swapped
        "26-014-073, 26-014-07, 1", // one left out
        "26-014-073, 26-014-0733, 1", // one too many
        "26-014-073, 26-014-079, 1", // one wrong
        "GOLD, GOLD2, 1",
        "gold, GOLD, 0",
        "kitten, sitting, 3" // Wagner & Fischer's distance of this pair, as given in many textbooks
    })
    void aSlipCountsOne(String one, String other, double slips) {
        assertEquals(slips, NearestNumbers.distance(one, other), 1e-12);
        assertEquals(slips, NearestNumbers.distance(other, one), 1e-12);
    }

    @Test
    void whatLooksAlikeInAHandsWritingIsNearer() {
        assertEquals(
                List.of("26-014-071", "26-014-072"),
                NearestNumbers.of("26-014-077", Stream.of("26-014-072", "26-014-071", "18-002-100"), 5));
        assertEquals(1 / 3.0, NearestNumbers.distance("26-O14-073", "26-014-073"), 1e-12);
    }

    @Test
    void theCheckTellsWhichOfTwoWasMeant() {
        Reading swapped = Reading.of("26-014-037=" + CheckCharacter.of("26-014-073"));
        assertEquals(
                List.of("26-014-073", "26-014-031"),
                NearestNumbers.of(swapped, Stream.of("26-014-031", "26-014-073"), 5));
        assertEquals(
                "26-014-031",
                NearestNumbers.of("26-014-037", Stream.of("26-014-031", "26-014-073"), 5)
                        .get(0));
    }

    @Test
    void aNumberTooFarAwayIsNotOffered() {
        assertEquals(List.of(), NearestNumbers.of("GOLD", Stream.of("26-014-073"), 5));
        assertEquals(List.of("GOLF", "GALA"), NearestNumbers.of("GOLD", Stream.of("FIE", "GALA", "GOLF", "RUSS"), 5));
    }
}
