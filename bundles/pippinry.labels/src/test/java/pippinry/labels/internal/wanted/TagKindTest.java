package pippinry.labels.internal.wanted;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.ask.HouseRate;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.Interval;
import pippinry.model.number.CheckCharacter;

class TagKindTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 27);

    private final Program program = SmallProgram.larkmoor().program();

    private Wish wish() {
        return Wish.of(program, TODAY);
    }

    private static List<String> numbers(WantedTags wanted) {
        return wanted.tags().stream().map(Tag::number).toList();
    }

    private String lines(TagKind kind, String number) {
        return kind.wanted(wish()).tags().stream()
                .filter(tag -> tag.number().equals(number))
                .findFirst()
                .map(tag -> String.join(" | ", tag.lines()).replace('\u00a0', ' '))
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "POLLINATIONS; 26-014/1 26-015/2 26-015/10",
                "FRUITBAGS; 26-015/2 26-015/2 26-015/2",
                "SEEDLOTS; 25-002-S1",
                "POTS; 24-003-001A",
                "GRAFTS; 24-003-002B",
                "BUNDLES; 24-003-002",
                "PLANTS; 24-003-002B COX-A 24-003-001A 24-003-010B",
                "TREES; 24-003-002B COX-A",
                "ROWS; A/1 A/2"
            })
    void tagsComeInTheOrderInWhichTheyAreHung(TagKind kind, String numbers) {
        assertEquals(numbers, String.join(" ", numbers(kind.wanted(wish()))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "POLLINATIONS; 26-014/1; ♀ Golden Delicious × ♂ Prima | 2026",
                "POLLINATIONS; 26-015/2; ♀ Cox’s Orange Pippin × ♂ Golden Delicious or Prima | 2026 · on COX-A · 24 flowers",
                "POLLINATIONS; 26-015/10; ♀ Cox’s Orange Pippin × unknown | 2026 · bag without pollen · on COX-A",
                "SEEDLOTS; 25-002-S1; bought fruit | harvested 2025-10-03 · 84 full seeds | damp sand",
                "PLANTS; 24-003-002B; ♀ Cox’s Orange Pippin, open pollinated | 2024 · on M.27 · A · row 2, place 9 | identity in doubt",
                "PLANTS; 24-003-010B; ♀ Cox’s Orange Pippin, open pollinated | 2024 · limb of COX-A 1.2 m S",
                "PLANTS; COX-A; Cox’s Orange Pippin | on M.9 · A · row 2, place 10",
                "BUNDLES; 24-003-002; ♀ Cox’s Orange Pippin, open pollinated | 1 scion for 24-003-002B",
                "ROWS; A/2; row 2 · counted from the gate · guards not counted | 2 plants: place 9 24-003-002B to place 10 COX-A"
            })
    void aTagSaysWhoAndWhere(TagKind kind, String number, String lines) {
        assertEquals(lines, lines(kind, number));
    }

    @Test
    void parentsBreakAfterTheCrossSignOnly() {
        String parents =
                TagKind.POLLINATIONS.wanted(wish()).tags().get(0).lines().get(0);
        assertEquals(List.of("♀\u00a0Golden", "Delicious\u00a0×", "♂\u00a0Prima"), List.of(parents.split(" ")));
    }

    @Test
    void everyPlantsTagCarriesItsCheck() {
        for (Tag tag : TagKind.PLANTS.wanted(wish()).tags()) {
            assertEquals(Optional.of("" + CheckCharacter.of(tag.number())), tag.check());
        }
    }

    @Test
    void neutralNumbersGoOnAfterTheHighestAndSkipTheStar() {
        WantedTags wanted = TagKind.NEUTRAL.wanted(wish().counting(80));
        assertEquals("T-0042", numbers(wanted).get(0));
        assertEquals(80, wanted.given().size());
        assertTrue(numbers(wanted).stream().noneMatch(number -> CheckCharacter.of(number) == '*'));
        assertTrue(wanted.tags().get(79).number().compareTo("T-0121") > 0, "some were skipped");
    }

    @Test
    void aPlannedCrossGetsAsManyBranchesAsItsFlowersAskFor() {
        // 60 seedlings / (0.1 set x 5 seeds x 0.8 emergence x 0.75 potted) = 200 flowers; 20 on a branch.
        HouseRates rates = (on, step, seedParent) -> {
            double middle =
                    switch (step) {
                        case SET -> 0.1;
                        case SEEDS_PER_FRUIT -> 5;
                        case EMERGENCE -> 0.8;
                        default -> 0.75;
                    };
            return new HouseRate(new Interval(middle, middle, middle, 0.8), "for a test");
        };
        Wish wish = new Wish(
                program,
                TODAY,
                wish().year(),
                Optional.of("26-014"),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                false,
                0,
                20,
                Optional.of(rates));
        WantedTags wanted = TagKind.POLLINATIONS.wanted(wish);
        assertEquals(10, wanted.given().size());
        assertTrue(numbers(wanted).stream().noneMatch(number -> CheckCharacter.of(number) == '*'));
    }

    @Test
    void whatWasNotedAsPrintedNoLongerWaits() throws EditRefused {
        Edit.Draft edit = Edit.by("IN", "printed");
        PrintedTags.of(program).note(List.of("COX-A", "24-003-001A", "COX-A"), TagKind.PLANTS, TODAY, "IN", edit);
        Program later = program.apply(edit.done(), Instant.EPOCH).program();
        assertEquals(
                List.of("24-003-002B", "24-003-010B"),
                numbers(TagKind.PLANTS.wanted(Wish.of(later, TODAY).onlyWaiting())));
        assertEquals(4, TagKind.PLANTS.wanted(Wish.of(later, TODAY)).tags().size());
    }

    @Test
    void numbersThatAreNamedArePrintedWhateverTheirState() {
        assertEquals(
                List.of("24-003-002A", "COX-A"),
                numbers(TagKind.PLANTS.wanted(wish().forNumbers(List.of("COX-A", "24-003-002A")))).stream()
                        .sorted()
                        .toList());
        assertEquals(List.of("T-0041"), numbers(TagKind.NEUTRAL.wanted(wish().forNumbers(List.of("T-0041")))));
    }

    @Test
    void aNumberThatIsNotOnFileIsRefused() {
        var refused = assertThrows(
                IllegalArgumentException.class, () -> TagKind.TREES.wanted(wish().forNumbers(List.of("24-003-099A"))));
        assertTrue(refused.getMessage().contains("24-003-099A"));
    }
}
