package pippinry.model.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PackedTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "0",
                "7",
                "-7",
                "1.50",
                "0.0",
                "0.001",
                "-0.5",
                "999999999999999",
                "-99999999999999.9",
                "2016-05-14",
                "2016-05-14T09:30",
                "1969-12-31",
                "1969-12-31T23:59",
                "0001-01-01",
                "9999-12-31T23:59",
                "2016-02-29"
            })
    void plainTextsPackAndUnpackToTheSame(String text) {
        assertEquals(text, Packed.text(Packed.plain(text), Words.none()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-",
                "-0",
                "-0.0",
                "007",
                "+1",
                "1.",
                ".5",
                "1e3",
                "1 ",
                "١",
                "1.2.3",
                "--1",
                "1-",
                "9999999999999999",
                "2016-13-01",
                "2015-02-29",
                "2016-05-1",
                "2016-05-14T24:00",
                "2016-05-14 09:30",
                "2016-05-14T09:30:00",
                "2016-05",
                "about 2016",
                "S2/S3",
                "ns",
                "-016-05-14",
                "2016-05-14T9:300"
            })
    void allElseIsAWord(String text) {
        assertEquals(Packed.NOT_PLAIN, Packed.plain(text));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 1 << 20, Integer.MAX_VALUE})
    void wordsKeepTheirNumbers(int number) {
        assertEquals(number, Packed.wordNumber(Packed.word(number)));
    }
}
