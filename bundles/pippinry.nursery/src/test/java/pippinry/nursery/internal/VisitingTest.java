package pippinry.nursery.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.model.Program;
import pippinry.model.record.Done;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.act.NotPossible;
import pippinry.nursery.internal.act.Visiting;

class VisitingTest {

    private final Program program = Records.of(
            """
            genotypes: code
            FIE
            TOP
            GOLD
            crosses: code,seed_parent,pollen_parent
            25-001,FIE,TOP
            pollen: lot,genotype
            P-TOP,TOP
            P-GOLD,GOLD
            pollinations: tag,cross,kind,flowers,set_fruits
            25-001/1,25-001,hand,,
            25-001/2,25-001,hand,20,8
            25-001/4,25-001,control_no_pollen,20,
            """);

    private static Visiting visit(String tag, Done did, OptionalInt count, String pollen, String cause) {
        return new Visiting(
                tag,
                did,
                count,
                Optional.ofNullable(pollen).map(Code::of),
                PartialDate.parse("2025-05-20"),
                "IN",
                "sun",
                cause);
    }

    private Program after(Visiting visit) throws Exception {
        return program.apply(visit.in(program, "IN"), Instant.EPOCH).program();
    }

    private static Pollination branch(Program program, String tag) {
        return program.find(Kinds.POLLINATIONS, Code.<Pollination>of(tag)).orElseThrow();
    }

    @Test
    void theFirstPassTellsHowManyFlowersThereAre() throws Exception {
        Program after = after(visit("25-001/1", Done.POLLINATED, OptionalInt.of(24), "P-TOP", ""));
        assertEquals(24, branch(after, "25-001/1").flowers().orElseThrow());
        assertEquals(1, after.table(Kinds.VISITS).size());
    }

    @Test
    void aHarvestStandsWithTheBranch() throws Exception {
        Program after = after(visit("25-001/2", Done.HARVEST, OptionalInt.of(5), null, ""));
        assertEquals(5, branch(after, "25-001/2").harvestedFruits().orElseThrow());
    }

    @Test
    void aBranchThatIsGoneKeepsItsCauseAndWhatHungOnIt() throws Exception {
        Program after = after(visit("25-001/2", Done.LOST, OptionalInt.empty(), null, "wind"));
        assertEquals("wind", branch(after, "25-001/2").lossCause());
        assertEquals(
                8,
                after.table(Kinds.LOSSES).stream()
                        .findFirst()
                        .orElseThrow()
                        .number()
                        .orElseThrow());
    }

    @Test
    void fruitsThatAreGoneDoNotEndTheBranch() throws Exception {
        Program after = after(visit("25-001/2", Done.LOST, OptionalInt.of(3), null, "pigeons"));
        assertEquals("", branch(after, "25-001/2").lossCause());
        assertEquals(0, after.table(Kinds.VISITS).size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            nullValues = "none",
            value = {
                "25-001/1; POLLINATED; 20; P-GOLD; Pollen lot P-GOLD is of GOLD, but 25-001 is pollinated with TOP",
                "25-001/1; POLLINATED; 20; P-NO; There is no pollen lot P-NO on file",
                "25-001/4; POLLINATED; 20; P-TOP; 25-001/4 is a control bag: it gets no pollen",
                "25-001/2; SET; 21; none; 21 fruits set of 20 flowers cannot be",
                "25-001/2; HARVEST; 9; none; 9 fruits picked of 8 fruits set cannot be",
                "25-001/3; SET; 2; none; There is no tag 25-001/3 on file; nearest are 25-001/1"
            })
    void whatCannotBeIsRefusedWithItsReason(String tag, Done did, int count, String pollen, String reason) {
        Visiting visit = visit(tag, did, OptionalInt.of(count), pollen, "");
        NotPossible refused = assertThrows(NotPossible.class, () -> visit.in(program, "IN"));
        assertTrue(refused.getMessage().startsWith(reason), refused.getMessage());
    }

    @Test
    void aLossNeedsACause() {
        assertThrows(IllegalArgumentException.class, () -> visit("25-001/1", Done.LOST, OptionalInt.empty(), null, ""));
    }
}
