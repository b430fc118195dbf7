package pippinry.pedigree.internal.kinship;

import java.util.Arrays;

/**
 * The inverse of the relationship matrix of all genotypes, sparse, inbreeding taken in: A⁻¹ = (T⁻¹)' D⁻¹ T⁻¹, put together
 * genotype by genotype. C. R. Henderson (1976) A simple method for computing the inverse of a numerator relationship matrix
 * used in prediction of breeding values, Biometrics 32:69-83; R. L. Quaas (1976) Computing the diagonal elements and inverse
 * of a large numerator relationship matrix, Biometrics 32:949-953; one of several candidates enters by its probability, as C.
 * R. Henderson (1988) Use of an average numerator relationship matrix for multiple-sire joining, Journal of Animal Science
 * 66:1614-1621. Cost: at most six elements a genotype with known or unknown parents; with a group of m possible parents
 * about m²/2 for each seedling, so a wide open pollen group is dear.
 *
 * <p>Rows are genotypes, parents before offspring; the lower triangle is kept column by column, rows ascending.
 */
public final class RelationshipInverse {
    private static final long TOO_MANY = 200_000_000L;

    private final int[] rowOfIndividual;
    private final int[] individualOfRow;
    private int[] columnStart;
    private int[] rows;
    private double[] values;

    private RelationshipInverse(int[] rowOfIndividual, int[] individualOfRow) {
        this.rowOfIndividual = rowOfIndividual;
        this.individualOfRow = individualOfRow;
    }

    /**
     * Puts the inverse together; {@link Kinship#ofItsOwn} says what is done where two genotypes are the same. Refused when it
     * would have more than 200 million elements.
     */
    public static RelationshipInverse of(Kinship kinship) {
        PedigreeGraph graph = kinship.graph();
        int[] individualOfRow = new int[graph.nodes()];
        int[] rowOfNode = new int[graph.nodes()];
        int size = 0;
        for (int node = 0; node < graph.nodes(); node++) {
            rowOfNode[node] = size;
            if (!graph.isMixture(node)) individualOfRow[size++] = graph.individual(node);
        }
        int[] rowOfIndividual = new int[graph.individuals()];
        for (int who = 0; who < rowOfIndividual.length; who++) rowOfIndividual[who] = rowOfNode[graph.node(who)];
        RelationshipInverse inverse = new RelationshipInverse(rowOfIndividual, Arrays.copyOf(individualOfRow, size));
        inverse.putTogether(new MendelianRows(kinship, rowOfNode), size);
        return inverse;
    }

    private void putTogether(MendelianRows mendelian, int size) {
        int[] start = new int[size + 1];
        long elements = 0;
        for (int node = 0; mendelian.to(node); node++) {
            for (int a = 0; a < mendelian.count(); a++) {
                start[mendelian.row(a) + 1] += a + 1;
                elements += a + 1;
            }
            if (elements > TOO_MANY) throw tooMany(elements);
        }
        for (int row = 0; row < size; row++) start[row + 1] += start[row];
        int[] looseRows = new int[(int) elements];
        double[] looseValues = new double[(int) elements];
        int[] next = Arrays.copyOf(start, size);
        for (int node = 0; mendelian.to(node); node++) {
            for (int a = 0; a < mendelian.count(); a++) {
                int column = mendelian.row(a);
                for (int b = 0; b <= a; b++) {
                    looseRows[next[column]] = mendelian.row(b);
                    looseValues[next[column]++] = mendelian.share(a) * mendelian.share(b) / mendelian.own();
                }
            }
        }
        addUp(start, looseRows, looseValues);
    }

    private static IllegalStateException tooMany(long elements) {
        return new IllegalStateException(
                "the inverse relationship matrix would have more than " + TOO_MANY + " elements (" + elements
                        + " so far): the open pollen group is too wide; name fewer possible parents");
    }

    private void addUp(int[] start, int[] looseRows, double[] looseValues) {
        int size = start.length - 1;
        columnStart = new int[size + 1];
        double[] sum = new double[size];
        boolean[] touched = new boolean[size];
        int kept = 0;
        for (int column = 0; column < size; column++) {
            int first = kept;
            for (int at = start[column]; at < start[column + 1]; at++) {
                int row = looseRows[at];
                sum[row] += looseValues[at];
                if (!touched[row]) {
                    touched[row] = true;
                    looseRows[kept++] = row;
                }
            }
            Arrays.sort(looseRows, first, kept);
            for (int at = first; at < kept; at++) {
                looseValues[at] = sum[looseRows[at]];
                sum[looseRows[at]] = 0;
                touched[looseRows[at]] = false;
            }
            columnStart[column + 1] = kept;
        }
        rows = Arrays.copyOf(looseRows, kept);
        values = Arrays.copyOf(looseValues, kept);
    }

    /** How many genotypes. */
    public int size() {
        return individualOfRow.length;
    }

    /** How many elements of the lower triangle are not zero. */
    public int elements() {
        return rows.length;
    }

    /** The row of an individual; a sport has that of its origin. */
    public int row(int individual) {
        return rowOfIndividual[individual];
    }

    /** The individual of a row: of sports and their origin, the origin. */
    public int individual(int row) {
        return individualOfRow[row];
    }

    /** Where each column begins in {@link #rows()} and {@link #values()}; one more entry than columns. */
    public int[] columnStart() {
        return columnStart.clone();
    }

    /** The rows of the elements. */
    public int[] rows() {
        return rows.clone();
    }

    /** The elements. */
    public double[] values() {
        return values.clone();
    }
}
