package pippinry.statistics.sparse;

/** The matrix has no Cholesky factor: some combination of its variables has no positive square. */
public final class NotPositiveDefinite extends ArithmeticException {
    private static final long serialVersionUID = 1;

    private final int variable;

    NotPositiveDefinite(int variable) {
        super("not positive definite at variable " + variable);
        this.variable = variable;
    }

    /** The variable at which it showed; others it depends on were eliminated before. */
    public int variable() {
        return variable;
    }
}
