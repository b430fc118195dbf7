package pippinry.nursery.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.value.Code;
import pippinry.nursery.internal.act.Binding;
import pippinry.nursery.internal.act.NotPossible;

class BindingTest {

    private static final Program PROGRAM = Records.of(
            """
            genotypes: code
            FIE
            TOP
            GOR
            plants: tag,genotype
            FIE-1,FIE
            crosses: code,seed_parent,pollen_parent
            26-001,FIE,TOP
            26-002,FIE,GOR
            pollen: lot,genotype
            P1,TOP
            P2,GOR
            pollinations: tag,flowers
            T-0417,14
            visits: pollination,time,did,count
            T-0417,2026-05-20T08:00,emasculated,14
            T-0417,2026-05-20T10:00,pollinated,14
            """);

    @Test
    void whatWasNotedUnderTheTagStaysAndThePassGetsItsPollen() throws Exception {
        Program after = PROGRAM.apply(bind("26-001", "P1").in(PROGRAM, "IN"), Instant.EPOCH)
                .program();
        Pollination tag =
                after.find(Kinds.POLLINATIONS, Code.<Pollination>of("T-0417")).orElseThrow();
        assertEquals(Optional.of(Code.of("26-001")), tag.cross());
        assertEquals(Optional.of(Code.of("FIE-1")), tag.plant());
        assertEquals(OptionalInt.of(14), tag.flowers());
        assertEquals(2, after.table(Kinds.VISITS).size());
        assertEquals(
                1,
                after.table(Kinds.VISITS).stream()
                        .filter(visit -> visit.pollenLot().equals(Optional.of(Code.of("P1"))))
                        .count());
    }

    @Test
    void pollenOfAnotherParentIsRefused() {
        NotPossible no =
                assertThrows(NotPossible.class, () -> bind("26-001", "P2").in(PROGRAM, "IN"));
        assertTrue(no.getMessage().contains("P2 is of GOR"), no.getMessage());
    }

    @Test
    void aTagThatIsBoundIsNotBoundToAnother() throws Exception {
        Program bound = PROGRAM.apply(bind("26-001", "P1").in(PROGRAM, "IN"), Instant.EPOCH)
                .program();
        assertThrows(NotPossible.class, () -> bind("26-002", "P2").in(bound, "IN"));
    }

    private static Binding bind(String cross, String pollen) {
        return new Binding(
                Code.of("T-0417"),
                Code.of(cross),
                Optional.of(Code.of("FIE-1")),
                Optional.of(Code.of(pollen)),
                OptionalInt.empty());
    }
}
