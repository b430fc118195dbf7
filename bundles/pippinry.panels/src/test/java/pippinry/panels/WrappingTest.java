package pippinry.panels;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class WrappingTest {

    @Test
    void aLineIsFilledBeforeTheNextBegins() {
        assertEquals(List.of("one two", "three"), wrapped("one two three", 9));
    }

    @Test
    void whatFitsExactlyStaysOnItsLine() {
        assertEquals(List.of("one two"), wrapped("one two", 7));
    }

    @Test
    void aWordWiderThanTheRoomStandsAloneAndWhole() {
        assertEquals(List.of("a", "selected", "b"), wrapped("a selected b", 4));
    }

    @Test
    void linesOfTheTextStayLines() {
        assertEquals(List.of("one", "", "two"), wrapped("one\n\ntwo", 20));
    }

    private static List<String> wrapped(String text, int room) {
        return Wrapping.of(text, String::length, room);
    }
}
