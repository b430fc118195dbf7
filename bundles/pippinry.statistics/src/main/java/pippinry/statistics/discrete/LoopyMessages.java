package pippinry.statistics.discrete;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Messages between tables and unknowns, passed until they settle; half of the old message is kept each time. */
final class LoopyMessages {

    private static final int MOST_ROUNDS = 500;
    private static final double SETTLED = 1e-9;

    private final int[] sizes;
    private final List<Factor> factors;
    private final List<List<double[]>> messages = new ArrayList<>();
    private final List<List<int[]>> ties = new ArrayList<>();

    LoopyMessages(int[] sizes, List<Factor> factors) {
        this.sizes = sizes;
        this.factors = factors;
        Arrays.stream(sizes).forEach(size -> ties.add(new ArrayList<>()));
        for (int factor = 0; factor < factors.size(); factor++) {
            int[] unknowns = factors.get(factor).unknowns();
            List<double[]> out = new ArrayList<>();
            for (int i = 0; i < unknowns.length; i++) {
                out.add(even(sizes[unknowns[i]]));
                ties.get(unknowns[i]).add(new int[] {factor, i});
            }
            messages.add(out);
        }
    }

    List<double[]> marginals() {
        double change = 1;
        for (int round = 0; round < MOST_ROUNDS && change > SETTLED; round++) {
            change = 0;
            for (int factor = 0; factor < factors.size(); factor++) {
                change = Math.max(change, send(factor));
            }
        }
        List<double[]> marginals = beliefs();
        marginals.forEach(LoopyMessages::scale);
        return marginals;
    }

    private List<double[]> beliefs() {
        List<double[]> beliefs = new ArrayList<>();
        Arrays.stream(sizes).forEach(size -> beliefs.add(even(size)));
        for (int factor = 0; factor < factors.size(); factor++) {
            int[] unknowns = factors.get(factor).unknowns();
            for (int i = 0; i < unknowns.length; i++) {
                multiply(beliefs.get(unknowns[i]), messages.get(factor).get(i));
            }
        }
        return beliefs;
    }

    private double send(int factor) {
        Factor table = factors.get(factor);
        double change = 0;
        for (int i = 0; i < table.unknowns().length; i++) {
            Factor product = table;
            for (int j = 0; j < table.unknowns().length; j++) {
                if (j != i) {
                    product = product.times(
                            new Factor(new int[] {table.unknowns()[j]}, new int[] {table.sizes()[j]}, to(factor, j)));
                }
            }
            double[] fresh = product.of(table.unknowns()[i]);
            double[] old = messages.get(factor).get(i);
            for (int state = 0; state < old.length; state++) {
                double next = (old[state] + fresh[state]) / 2;
                change = Math.max(change, Math.abs(next - old[state]));
                old[state] = next;
            }
        }
        return change;
    }

    /** What the other tables say about an unknown of this one. */
    private double[] to(int factor, int index) {
        int unknown = factors.get(factor).unknowns()[index];
        double[] product = even(sizes[unknown]);
        for (int[] tie : ties.get(unknown)) {
            if (tie[0] != factor) {
                multiply(product, messages.get(tie[0]).get(tie[1]));
            }
        }
        scale(product);
        return product;
    }

    private static double[] even(int size) {
        double[] even = new double[size];
        Arrays.fill(even, 1.0 / size);
        return even;
    }

    private static void multiply(double[] into, double[] by) {
        for (int i = 0; i < into.length; i++) {
            into[i] *= by[i];
        }
        scale(into);
    }

    private static void scale(double[] weights) {
        double sum = Arrays.stream(weights).sum();
        for (int i = 0; i < weights.length && sum > 0; i++) {
            weights[i] /= sum;
        }
    }
}
