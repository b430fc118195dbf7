package pippinry.statistics.optimise;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LinearProgramTest {

    @Test
    void aTextbookProgramIsSolved() {
        // Maximise 3x + 5y with x <= 4, 2y <= 12, 3x + 2y <= 18: (2, 6), 36 (Hillier & Lieberman, Introduction to
        // Operations Research, chapter 3; from memory).
        LinearProgram program = new LinearProgram();
        int x = program.unknown(0, 4, 3);
        int y = program.unknown(0, Double.POSITIVE_INFINITY, 5);
        program.atMost(Map.of(y, 2.0), 12);
        program.atMost(Map.of(x, 3.0, y, 2.0), 18);
        LinearProgram.Solution best = program.solve().orElseThrow();
        assertArrayEquals(new double[] {2, 6}, best.values(), 1e-9);
        assertEquals(36, best.gain(), 1e-9);
        assertTrue(best.optimal());
    }

    @Test
    void contradictingLimitsHaveNoSolution() {
        LinearProgram program = new LinearProgram();
        int x = program.whole(0, 10, 1);
        program.atLeast(Map.of(x, 1.0), 7);
        program.atMost(Map.of(x, 1.0), 6);
        assertEquals(Optional.empty(), program.solve());
    }

    /**
     * Small mate-choice models with a fixed charge for each parent, the kind on which later versions of the solver failed,
     * against going through every choice of parents.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void fixedChargesAgreeWithGoingThroughEveryChoice(long seed) {
        Random dice = new Random(seed);
        int seeds = 3;
        int pollens = 3;
        double[][] worth = new double[seeds][pollens];
        double[] charge = dice.doubles(seeds + pollens, 5, 25).toArray();
        for (double[] row : worth) {
            for (int j = 0; j < pollens; j++) {
                row[j] = 1 + 2 * dice.nextDouble();
            }
        }
        int places = 40;
        LinearProgram program = new LinearProgram();
        Map<Integer, Double> total = new HashMap<>();
        int[] use = new int[seeds + pollens];
        for (int p = 0; p < use.length; p++) {
            use[p] = program.whole(0, 1, -charge[p]);
        }
        for (int i = 0; i < seeds; i++) {
            for (int j = 0; j < pollens; j++) {
                int n = program.whole(0, 15, worth[i][j]);
                total.put(n, 1.0);
                program.atMost(Map.of(n, 1.0, use[i], -15.0), 0);
                program.atMost(Map.of(n, 1.0, use[seeds + j], -15.0), 0);
            }
        }
        program.atMost(total, places);
        assertEquals(
                everyChoice(worth, charge, places),
                program.solve().orElseThrow().gain(),
                1e-6);
    }

    private static double everyChoice(double[][] worth, double[] charge, int places) {
        double best = 0;
        for (int used = 0; used < 1 << charge.length; used++) {
            double gain = 0;
            for (int p = 0; p < charge.length; p++) {
                gain -= (used >> p & 1) * charge[p];
            }
            List<Double> open = new ArrayList<>();
            for (int i = 0; i < worth.length; i++) {
                for (int j = 0; j < worth[i].length; j++) {
                    if ((used >> i & 1) == 1 && (used >> (worth.length + j) & 1) == 1) {
                        open.add(worth[i][j]);
                    }
                }
            }
            open.sort(Comparator.reverseOrder());
            int left = places;
            for (double each : open) {
                gain += each * Math.min(15, left);
                left -= Math.min(15, left);
            }
            best = Math.max(best, gain);
        }
        return best;
    }
}
