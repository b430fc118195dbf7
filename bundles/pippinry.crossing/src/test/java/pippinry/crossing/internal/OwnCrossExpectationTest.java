package pippinry.crossing.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pippinry.model.Program;
import pippinry.model.ask.Interval;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;

class OwnCrossExpectationTest {

    private final OwnCrossExpectation expectation = new OwnCrossExpectation(List.of(TestPack.pack()));

    private static final Program PROGRAM = new TestProgram()
            .csv("genotypes", "code,name,crop\nSUS,,apple\nCAR,,apple\nTWO,,apple\nNEW,,apple")
            .csv("alleles", "genotype,locus,alleles\nSUS,Rvi6,rvi6/rvi6\nCAR,Rvi6,Rvi6/rvi6\nTWO,Rvi6,Rvi6/Rvi6")
            .csv("goals", "trait,kind,direction,threshold\nscab_leaf,must,less,2\nstore.weeks,must,more,20")
            .build();

    @Test
    void knownParentsGiveAShareWithoutDoubt() {
        assertEquals(new Interval(0.5, 0.5, 0.5, 0.8), share("CAR"));
        assertEquals(new Interval(1, 1, 1, 0.8), share("TWO"));
    }

    @Test
    void candidatesWidenIt() {
        Interval both = share("SUS|TWO");
        assertEquals(0, both.low(), 1e-12);
        assertEquals(1, both.high(), 1e-12);
        Interval self = expectation.share(PROGRAM, Code.of("CAR"), PollenParent.parse("self"), "scab_leaf");
        assertEquals(0.75, self.middle(), 1e-12);
    }

    @Test
    void whatCannotBeToldIsOpen() {
        Interval open = expectation.share(PROGRAM, Code.of("SUS"), PollenParent.parse("op"), "scab_leaf");
        assertTrue(Double.isNaN(open.middle()) && open.low() == 0 && open.high() == 1);
        Interval store = expectation.share(PROGRAM, Code.of("SUS"), PollenParent.parse("CAR"), "store.weeks");
        assertTrue(Double.isNaN(store.middle()));
    }

    private Interval share(String pollen) {
        return expectation.share(PROGRAM, Code.of("SUS"), PollenParent.parse(pollen), "scab_leaf");
    }
}
