package pippinry.model.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PartialDateTest {

    @ParameterizedTest
    @CsvSource({
        "2016,2016-01-01,2016-12-31",
        "2016-02,2016-02-01,2016-02-29",
        "2016-05-14,2016-05-14,2016-05-14",
        "2016-05-14T09:30,2016-05-14,2016-05-14",
        "about 2014,2013-01-01,2015-12-31",
        "about 2014-03,2014-02-01,2014-04-30"
    })
    void aDateIsKeptAsGivenAndMeansASpanOfDays(String text, String earliest, String latest) {
        PartialDate date = PartialDate.parse(text);
        assertEquals(text, date.toString());
        assertEquals(earliest, date.earliest().toString());
        assertEquals(latest, date.latest().toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"2015-02-29", "2016-13", "16-05-14", "2016-5-4", "14.5.2016", "2016-05-14T25:00", "", "about"})
    void aDayThatDoesNotExistIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> PartialDate.parse(text));
    }

    @Test
    void datesSortByTheFirstDayTheyMayMean() {
        assertTrue(PartialDate.parse("2016").compareTo(PartialDate.parse("2016-01-02")) < 0);
        assertTrue(PartialDate.parse("2016-05-14T09:30").compareTo(PartialDate.parse("2016-05-14T10:00")) < 0);
    }
}
