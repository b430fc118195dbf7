package pippinry.exchange.internal.bring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OwnDateTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 27);

    @ParameterizedTest
    @CsvSource({
        "14.5.2016, 2016-05-14",
        "14. 5. 2016, 2016-05-14",
        "14.05.16, 2016-05-14",
        "14.05.99, 1999-05-14",
        "14.05.27, 1927-05-14",
        "2016/5/4, 2016-05-04",
        "2016.05, 2016-05",
        "5/2016, 2016-05",
        "14 May 2016, 2016-05-14",
        "May 2016, 2016-05",
        "'Sept. 2016', 2016-09",
        "ca. 2014, about 2014",
        "c. 2014, about 2014",
        "~2014, about 2014",
        "2014?, about 2014",
        "2014 ?, about 2014",
        "14/5/2016, 2016-05-14",
        "14-5-2016, 2016-05-14",
        "spring 2016, ''",
        "soon, ''",
    })
    void datesAsPeopleWriteThem(String written, String date) throws Unclear {
        assertEquals(date, new OwnDate(DateOrder.DAY_FIRST, TODAY).read(written).orElse(""));
    }

    @Test
    void dayAndMonthAreNotGuessed() throws Unclear {
        OwnDate unknown = new OwnDate(DateOrder.NOT_KNOWN, TODAY);
        assertThrows(Unclear.class, () -> unknown.read("3/4/2016"));
        assertEquals("2016-04-04", unknown.read("4/4/2016").orElseThrow());
        assertEquals(
                "2016-03-04",
                new OwnDate(DateOrder.MONTH_FIRST, TODAY).read("3/4/2016").orElseThrow());
    }
}
