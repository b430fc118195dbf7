package pippinry.crossing.internal.goals;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Goal;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

class GoalReachTest {

    private Program program;

    @BeforeEach
    void putScoresOnFile() throws Exception {
        Edit.Draft edit = Edit.by("IN", "scores")
                .put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, "code", "FIE"))
                .put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, "code", "ELS"))
                .put(Kinds.PLANTS, row(Kinds.PLANTS, "tag", "FIEA", "genotype", "FIE"))
                .put(Kinds.SCORES, row(Kinds.SCORES, "subject", "FIEA", "trait", "scab_leaf", "value", "1"))
                .put(Kinds.SCORES, row(Kinds.SCORES, "subject", "FIE", "trait", "scab_leaf", "value", "4"))
                .put(Kinds.SCORES, row(Kinds.SCORES, "subject", "ELS", "trait", "scab_leaf", "value", "3"))
                .put(Kinds.SCORES, row(Kinds.SCORES, "subject", "ELS", "trait", "scab_leaf", "value", "ns"));
        program = Program.empty().apply(edit.done(), Instant.EPOCH).program();
    }

    @Test
    void scoresOfPlantsCountForTheirGenotypeAndNotSeenForNobody() throws Exception {
        GoalReach reach = GoalReach.of(program, goal("less", "2")).orElseThrow();
        assertEquals("FIE", reach.genotype());
        assertEquals(2.5, reach.mean());
        assertEquals(2, reach.scores());
        assertFalse(reach.reached());
    }

    @Test
    void aThresholdThatTheMeanMeetsIsReached() throws Exception {
        assertTrue(GoalReach.of(program, goal("less", "2.5")).orElseThrow().reached());
        assertEquals(2, GoalReach.of(program, goal("less", "3")).orElseThrow().reaching());
    }

    @Test
    void aTraitThatNobodyScoredHasNoReach() throws Exception {
        assertEquals(Optional.empty(), GoalReach.of(program, row(Kinds.GOALS, "trait", "mildew", "direction", "less")));
    }

    private static Goal goal(String direction, String threshold) throws Exception {
        return row(Kinds.GOALS, "trait", "scab_leaf", "kind", "must", "direction", direction, "threshold", threshold);
    }

    private static <T extends Record> T row(Kind<T> kind, String... cells) throws Exception {
        Map<String, String> given = new java.util.HashMap<>();
        for (int i = 0; i < cells.length; i += 2) {
            given.put(cells[i], cells[i + 1]);
        }
        return kind.read(column -> given.getOrDefault(column, ""));
    }
}
