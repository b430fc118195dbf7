package pippinry.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;

class NextNumbersTest {

    @Test
    void theFirstNumbersOfAYearStartAtOne() {
        NextNumbers numbers = new NextNumbers(Program.empty());
        assertEquals("26-001", numbers.cross(2026));
        assertEquals("26-001-001", numbers.seedlings("26-001", 1).numbers().get(0));
        assertEquals("T-0001", numbers.neutral(1).numbers().get(0));
    }

    @Test
    void noNumberNorItsCopyAHasAStarAndTheSkippedAreNamed() {
        NextNumbers.Given given = new NextNumbers(Program.empty()).seedlings("26-001", 200);
        assertEquals(200, given.numbers().size());
        assertFalse(given.skipped().isEmpty());
        for (String number : given.numbers()) {
            assertTrue(CheckCharacter.of(number) != '*' && CheckCharacter.of(number + "A") != '*', number);
        }
        for (String number : given.skipped()) {
            assertTrue(CheckCharacter.of(number) == '*' || CheckCharacter.of(number + "A") == '*', number);
        }
    }

    @Test
    void aSeedlingWhoseCopyAWouldHaveAStarIsPassedOver() {
        NextNumbers.Given given = new NextNumbers(Program.empty()).seedlings("25-003", 10);
        assertEquals('*', CheckCharacter.of("25-003-006A"));
        assertEquals(List.of("25-003-006"), given.skipped());
        assertEquals("25-003-011", given.numbers().get(9));
    }

    @Test
    void numbersGoOnAfterTheHighestGivenOrSkipped() throws Exception {
        NextNumbers.Given first = new NextNumbers(Program.empty()).seedlings("26-001", 40);
        Edit.Draft edit = first.markSkipped(Edit.by("IN", "potted"));
        for (String number : first.numbers()) {
            edit.put(Kinds.GENOTYPES, genotype(number));
        }
        Program program = Program.empty().apply(edit.done(), Instant.EPOCH).program();
        List<String> next = new NextNumbers(program).seedlings("26-001", 5).numbers();
        assertTrue(next.stream().noneMatch(first.numbers()::contains));
        assertEquals("26-002", new NextNumbers(program).cross(2026));
    }

    @Test
    void aCopyGetsTheNextLetterWithoutAStar() {
        assertEquals("26-014-073B", new NextNumbers(Program.empty()).copy("26-014-073"));
    }

    private static Genotype genotype(String code) throws Exception {
        return Kinds.GENOTYPES.read(column -> column.equals("code") ? code : "");
    }
}
