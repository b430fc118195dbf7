package pippinry.crossing.internal.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.crossing.internal.TestProgram;
import pippinry.model.Program;
import pippinry.model.record.Cross;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;

class MakeCrossTest {

    private static Program parents(String latitude) {
        return new TestProgram()
                .csv("genotypes", "code,kind\nFIE,cultivar\nELS,cultivar")
                .csv("settings", "key,value\nlatitude," + latitude)
                .build();
    }

    @Test
    void theCrossIsOnFileWithItsParentsReasonAndNumbersWanted() throws Exception {
        Program before = parents("52.9");
        MakeCross.Plan plan = plan(before, "2026-03-27");
        Program after = before.apply(plan.edit(), Instant.EPOCH).program();
        Cross cross = after.find(Kinds.CROSSES, Code.of(plan.number())).orElseThrow();
        assertEquals("FIE", cross.seedParent().orElseThrow().text());
        assertEquals("ELS", cross.pollenParent().toString());
        assertEquals("keeps and tastes", cross.reason());
        assertEquals(OptionalInt.of(40), cross.seedlingsWanted());
        assertTrue(after.faults().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"52.9,2026-03-27,26-001", "52.9,2026-11-20,27-001", "-41.3,2026-09-20,26-001", "-41.3,2026-12-20,26-001"
    })
    void itsYearIsThatOfTheBloomToCome(String latitude, String today, String number) {
        assertEquals(number, plan(parents(latitude), today).number());
    }

    private static MakeCross.Plan plan(Program program, String today) {
        return MakeCross.of(
                program,
                Code.of("FIE"),
                Code.of("ELS"),
                OptionalInt.of(40),
                "keeps and tastes",
                LocalDate.parse(today),
                "IN");
    }
}
