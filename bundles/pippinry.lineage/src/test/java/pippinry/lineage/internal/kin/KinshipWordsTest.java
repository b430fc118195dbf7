package pippinry.lineage.internal.kin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KinshipWordsTest {

    @ParameterizedTest
    @CsvSource({
        "0.5, one tree with itself",
        "0.25, full sisters",
        "0.281, full sisters",
        "0.13, half sisters",
        "0.0625, first cousins",
        "0.03, half cousins",
        "0.004, second cousins"
    })
    void theNearestTextbookCaseIsNamed(double value, String parents) {
        assertTrue(KinshipWords.inbreeding(value).contains(parents), KinshipWords.inbreeding(value));
        assertTrue(KinshipWords.coancestry(value).contains(parents), KinshipWords.coancestry(value));
    }

    @ParameterizedTest
    @CsvSource({"0", "0.0009"})
    void nothingWorthAFigureIsNoInbreeding(double value) {
        assertTrue(KinshipWords.inbreeding(value).contains("not inbred"));
        assertTrue(KinshipWords.coancestry(value).contains("Not related"));
    }
}
