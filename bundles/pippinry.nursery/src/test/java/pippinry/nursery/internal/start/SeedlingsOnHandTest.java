package pippinry.nursery.internal.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

class SeedlingsOnHandTest {

    private static final Instant NOW = Instant.parse("2026-03-27T10:00:00Z");

    @Test
    void thirtySeedlingsOfAnUnknownMotherStandInTheirRow() throws Exception {
        SeedlingsOnHand.Plan plan = new SeedlingsOnHand("", false, 2024, 30, "7").in(Program.empty(), "IN");
        Program program = Program.empty().apply(plan.edit(), NOW).program();
        assertEquals("24-001", plan.family());
        assertEquals(30, program.table(Kinds.GENOTYPES).size());
        assertEquals(30, program.table(Kinds.PLANTS).size());
        assertEquals(30, program.table(Kinds.PLACES).size());
        assertEquals("30", program.table(Kinds.PLACES).rows().get(29).value().place());
        assertTrue(program.faults().isEmpty());
    }

    @Test
    void aMotherOnFileIsFoundByNameAndANewOneGetsACode() throws Exception {
        Program once = Program.empty()
                .apply(
                        new SeedlingsOnHand("Bramley Seedling", true, 2024, 2, "")
                                .in(Program.empty(), "IN")
                                .edit(),
                        NOW)
                .program();
        Program twice = once.apply(
                        new SeedlingsOnHand("bramley seedling", false, 2025, 2, "")
                                .in(once, "IN")
                                .edit(),
                        NOW)
                .program();
        assertEquals(5, twice.table(Kinds.GENOTYPES).size());
        assertEquals(
                Optional.of(Code.of("BRAMLE")),
                twice.find(Kinds.GENOTYPES, Code.of("25-001-001")).orElseThrow().seedParent());
    }

    @Test
    void aSecondFamilyInTheSameRowStandsBehindTheFirst() throws Exception {
        Program once = Program.empty()
                .apply(
                        new SeedlingsOnHand("", false, 2024, 10, "7")
                                .in(Program.empty(), "IN")
                                .edit(),
                        NOW)
                .program();
        assertEquals(
                11, new SeedlingsOnHand("", false, 2025, 5, "7").in(once, "IN").firstPlace());
    }

    @Test
    void noneOrTooManyAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SeedlingsOnHand("", false, 2024, 0, ""));
        assertThrows(IllegalArgumentException.class, () -> new SeedlingsOnHand("", false, 2024, 10_000, ""));
    }

    @Test
    void seedOnHandBecomesALotWithAFamily() throws Exception {
        SeedOnHand.Plan plan =
                new SeedOnHand("", "bought apple", PartialDate.parse("2025-10"), 12, "dry").in(Program.empty(), "IN");
        Program program = Program.empty().apply(plan.edit(), NOW).program();
        assertEquals("L25-001", plan.lot());
        assertEquals(
                12,
                program.find(Kinds.SEEDLOTS, Code.of("L25-001"))
                        .orElseThrow()
                        .seedsFull()
                        .orElse(0));
        assertTrue(program.faults().isEmpty());
    }
}
