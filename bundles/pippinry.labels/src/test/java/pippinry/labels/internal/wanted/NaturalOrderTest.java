package pippinry.labels.internal.wanted;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {
    @Test
    void nineComesBeforeTen() {
        List<String> sorted = List.of("10", "A10", "9", "A2", "", "26-014/10", "26-014/3", "a1").stream()
                .sorted(NaturalOrder.BY_NUMBER)
                .toList();
        assertEquals(List.of("", "9", "10", "26-014/3", "26-014/10", "a1", "A2", "A10"), sorted);
    }
}
