package pippinry.statistics.sparse;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SparseCholeskyTest {
    /** A matrix with random places whose diagonal outweighs its rows, so it is positive definite. */
    private static SparseSymmetric random(int size, double filled, long seed) {
        Random random = new Random(seed);
        double[][] lower = new double[size][size];
        double[] row = new double[size];
        for (int j = 0; j < size; j++) {
            for (int i = j + 1; i < size; i++) {
                if (random.nextDouble() >= filled) continue;
                lower[i][j] = random.nextGaussian();
                row[i] += Math.abs(lower[i][j]);
                row[j] += Math.abs(lower[i][j]);
            }
        }
        for (int j = 0; j < size; j++) lower[j][j] = row[j] + 0.1 + random.nextDouble();
        return sparse(lower);
    }

    static SparseSymmetric sparse(double[][] lower) {
        int size = lower.length;
        int[] start = new int[size + 1];
        int[] rows = new int[size * size];
        double[] values = new double[size * size];
        int count = 0;
        for (int j = 0; j < size; j++) {
            for (int i = j; i < size; i++) {
                if (i != j && lower[i][j] == 0) continue;
                rows[count] = i;
                values[count++] = lower[i][j];
            }
            start[j + 1] = count;
        }
        return new SparseSymmetric(start, Arrays.copyOf(rows, count), Arrays.copyOf(values, count));
    }

    private static RealMatrix dense(SparseSymmetric sparse) {
        RealMatrix dense = new Array2DRowRealMatrix(sparse.size(), sparse.size());
        for (int j = 0; j < sparse.size(); j++) {
            for (int at = sparse.columnStart()[j]; at < sparse.columnStart()[j + 1]; at++) {
                dense.setEntry(sparse.rows()[at], j, sparse.values()[at]);
                dense.setEntry(j, sparse.rows()[at], sparse.values()[at]);
            }
        }
        return dense;
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "2, 1", "30, 0.1", "60, 0.05", "120, 0.02", "150, 0.2", "200, 0.01", "90, 1", "300, 0.03"})
    void solutionDeterminantAndInverseAgreeWithDenseAlgebra(int size, double filled) {
        SparseSymmetric matrix = random(size, filled, size);
        LUDecomposition dense = new LUDecomposition(dense(matrix));
        SparseCholesky factor = SparseCholesky.of(EliminationPlan.of(matrix), matrix);
        double[] right = new Random(7).doubles(size).toArray();
        double[] expected = dense.getSolver()
                .solve(new org.hipparchus.linear.ArrayRealVector(right))
                .toArray();
        assertArrayEquals(expected, factor.solve(right), 1e-11);
        assertEquals(Math.log(dense.getDeterminant()), factor.logDeterminant(), 1e-9 * size);
        RealMatrix inverse = dense.getSolver().getInverse();
        double[] selected = factor.inverseAtElements();
        for (int j = 0; j < size; j++) {
            for (int at = matrix.columnStart()[j]; at < matrix.columnStart()[j + 1]; at++) {
                assertEquals(inverse.getEntry(matrix.rows()[at], j), selected[at], 1e-11, j + " " + matrix.rows()[at]);
            }
        }
    }

    @Test
    void aPlanServesOtherValuesAtTheSamePlaces() {
        SparseSymmetric matrix = random(80, 0.05, 3);
        EliminationPlan plan = EliminationPlan.of(matrix);
        double[] doubled = Arrays.stream(matrix.values()).map(v -> 2 * v).toArray();
        double once = SparseCholesky.of(plan, matrix).logDeterminant();
        double twice = SparseCholesky.of(plan, matrix.withValues(doubled)).logDeterminant();
        assertEquals(once + 80 * Math.log(2), twice, 1e-10);
    }

    @Test
    void aMatrixThatIsNotPositiveDefiniteIsRefusedAtAVariableThatDependsOnOthers() {
        SparseSymmetric matrix = sparse(new double[][] {{1, 0, 0}, {2, 4, 0}, {0, 0, 1}});
        NotPositiveDefinite refused =
                assertThrows(NotPositiveDefinite.class, () -> SparseCholesky.of(EliminationPlan.of(matrix), matrix));
        assertTrue(refused.variable() < 2, () -> "variable " + refused.variable());
    }

    @Test
    void anArrowheadFillsNothing() {
        int size = 400;
        double[][] arrow = new double[size][size];
        for (int i = 0; i < size; i++) {
            arrow[i][0] = 1;
            arrow[i][i] = size;
        }
        SparseSymmetric matrix = sparse(arrow);
        assertEquals(2 * size - 1, elements(matrix, MinimumDegree.of(matrix)));
        assertEquals(
                size * (size + 1L) / 2,
                elements(matrix, IntStream.range(0, size).toArray()));
    }

    /** A chain has no fill in the order of its links, and a good order has none either. */
    @Test
    void aChainFillsNothing() {
        double[][] chain = new double[100][100];
        for (int i = 0; i < 100; i++) {
            chain[i][i] = 3;
            if (i > 0) chain[i][i - 1] = 1;
        }
        SparseSymmetric matrix = sparse(chain);
        assertEquals(199, elements(matrix, MinimumDegree.of(matrix)));
    }

    /** A square grid: the natural order fills about n√n, nested dissection 7.75 n log2 √n; minimum degree lies near the latter. */
    @Test
    void aGridFillsLittle() {
        SparseSymmetric grid = grid(50);
        int[] order = MinimumDegree.of(grid);
        assertArrayEquals(
                IntStream.range(0, 2500).toArray(),
                Arrays.stream(order).sorted().toArray());
        long natural = elements(grid, IntStream.range(0, 2500).toArray());
        long ordered = elements(grid, order);
        assertTrue(ordered < natural / 3, () -> ordered + " of " + natural);
    }

    private static SparseSymmetric grid(int side) {
        int[] start = new int[side * side + 1];
        int[] rows = new int[3 * side * side];
        double[] values = new double[rows.length];
        int count = 0;
        for (int i = 0; i < side * side; i++) {
            rows[count] = i;
            values[count++] = 5;
            if ((i + 1) % side != 0) {
                rows[count] = i + 1;
                values[count++] = -1;
            }
            if (i + side < side * side) {
                rows[count] = i + side;
                values[count++] = -1;
            }
            start[i + 1] = count;
        }
        return new SparseSymmetric(start, Arrays.copyOf(rows, count), Arrays.copyOf(values, count));
    }

    private static long elements(SparseSymmetric matrix, int[] order) {
        return Arrays.stream(EliminationTree.of(matrix, order).count)
                .asLongStream()
                .sum();
    }

    /** Large enough that blocks and subtrees are shared out: 57 600 unknowns. */
    @Test
    void sharedOutWorkGivesTheSameResultEachTime() {
        SparseSymmetric grid = grid(240);
        EliminationPlan plan = EliminationPlan.of(grid);
        SparseCholesky factor = SparseCholesky.of(plan, grid);
        double[] right = new Random(1).doubles(grid.size()).toArray();
        double[] solution = factor.solve(right);
        assertArrayEquals(right, grid.times(solution), 1e-10);
        assertArrayEquals(solution, SparseCholesky.of(plan, grid).solve(right));
        double[] inverse = factor.inverseAtElements();
        double trace = 0;
        for (int j = 0; j < grid.size(); j++) {
            for (int at = grid.columnStart()[j]; at < grid.columnStart()[j + 1]; at++) {
                trace += (grid.rows()[at] == j ? 1 : 2) * grid.values()[at] * inverse[at];
            }
        }
        assertEquals(grid.size(), trace, 1e-7);
    }

    @Test
    void aColumnWithoutItsDiagonalIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new SparseSymmetric(new int[] {0, 1, 2}, new int[] {1, 1}, new double[] {1, 1}));
    }
}
