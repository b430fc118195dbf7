package pippinry.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.model.value.Code;

class SheetTest {

    @Test
    void rowsKeepTheOrderOfTheWalk() {
        List<String> walk = List.of("26-014-010A", "26-014-002A", "COX A");
        Sheet sheet = new Sheet(Code.of("S-0001"), Optional.empty(), "", "A", "", Sheet.joined(walk), "");
        assertEquals(walk, sheet.subjectList());
        assertEquals(List.of(), sheet.traitList());
    }

    @Test
    void aCodeThatHoldsTheSeparatorIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Sheet.joined(List.of("A|B")));
    }
}
