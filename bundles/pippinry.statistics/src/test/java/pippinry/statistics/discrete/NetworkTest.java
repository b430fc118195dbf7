package pippinry.statistics.discrete;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NetworkTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void marginalsOfRandomNetworksAgreeWithAddingUpEveryCase(long seed) {
        Random dice = new Random(seed);
        int[] sizes = new int[7];
        Arrays.setAll(sizes, i -> 2 + dice.nextInt(2));
        Network network = new Network(sizes);
        List<int[]> scopes = new ArrayList<>();
        List<double[]> tables = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            int[] scope = dice.ints(0, 7).distinct().limit(1 + dice.nextInt(3)).toArray();
            double[] weights = dice.doubles(
                            Arrays.stream(scope).map(u -> sizes[u]).reduce(1, (x, y) -> x * y))
                    .toArray();
            network.tie(scope, weights);
            scopes.add(scope);
            tables.add(weights);
        }
        Network.Marginals marginals = network.marginals();
        assertTrue(marginals.exact());
        double[][] expected = everyCase(sizes, scopes, tables);
        for (int i = 0; i < sizes.length; i++) {
            assertArrayEquals(expected[i], marginals.of().get(i), 1e-12);
        }
    }

    @Test
    void treesComeOutExactEvenFromPassedMessages() {
        Network chain = new Network(new int[] {2, 2, 2});
        chain.tie(new int[] {0}, 0.9, 0.1);
        chain.tie(new int[] {0, 1}, 0.8, 0.2, 0.3, 0.7);
        chain.tie(new int[] {2, 1}, 0.6, 0.4, 0.1, 0.9);
        chain.tie(new int[] {2}, 0.5, 0.5);
        Network.Marginals exact = chain.marginals();
        Network.Marginals passed = chain.marginals(1);
        assertFalse(passed.exact());
        for (int i = 0; i < 3; i++) {
            assertArrayEquals(exact.of().get(i), passed.of().get(i), 1e-7);
        }
    }

    @Test
    void passedMessagesComeNearInALoop() {
        Network loop = new Network(new int[] {2, 2, 2});
        loop.tie(new int[] {0}, 0.7, 0.3);
        loop.tie(new int[] {0, 1}, 0.7, 0.3, 0.4, 0.6);
        loop.tie(new int[] {1, 2}, 0.6, 0.4, 0.3, 0.7);
        loop.tie(new int[] {0, 2}, 0.6, 0.4, 0.5, 0.5);
        double[] exact = loop.marginals().of().get(0);
        double[] passed = loop.marginals(1).of().get(0);
        assertEquals(exact[0], passed[0], 0.02);
    }

    @Test
    void untiedUnknownsStayEven() {
        Network network = new Network(new int[] {3, 2});
        network.tie(new int[] {1}, 1, 3);
        assertArrayEquals(
                new double[] {1.0 / 3, 1.0 / 3, 1.0 / 3},
                network.marginals().of().get(0),
                1e-15);
        assertArrayEquals(new double[] {0.25, 0.75}, network.marginals().of().get(1), 1e-15);
    }

    @Test
    void tensOfThousandsOfUnknownsInATreeAreQuick() {
        int n = 20_000;
        int[] sizes = new int[n];
        Arrays.fill(sizes, 2);
        Network network = new Network(sizes);
        network.tie(new int[] {0}, 0.2, 0.8);
        for (int i = 1; i < n; i++) {
            network.tie(new int[] {(i - 1) / 3, i}, 0.9, 0.1, 0.1, 0.9);
        }
        assertArrayEquals(new double[] {0.26, 0.74}, network.marginals().of().get(1), 1e-12);
    }

    private static double[][] everyCase(int[] sizes, List<int[]> scopes, List<double[]> tables) {
        double[][] sums = new double[sizes.length][];
        Arrays.setAll(sums, i -> new double[sizes[i]]);
        int cases = Arrays.stream(sizes).reduce(1, (x, y) -> x * y);
        for (int number = 0; number < cases; number++) {
            int[] state = new int[sizes.length];
            int rest = number;
            for (int i = 0; i < sizes.length; i++) {
                state[i] = rest % sizes[i];
                rest /= sizes[i];
            }
            double weight = 1;
            for (int t = 0; t < scopes.size(); t++) {
                int place = 0;
                for (int unknown : scopes.get(t)) {
                    place = place * sizes[unknown] + state[unknown];
                }
                weight *= tables.get(t)[place];
            }
            for (int i = 0; i < sizes.length; i++) {
                sums[i][state[i]] += weight;
            }
        }
        for (double[] row : sums) {
            double total = Arrays.stream(row).sum();
            Arrays.setAll(row, i -> row[i] / total);
        }
        return sums;
    }
}
