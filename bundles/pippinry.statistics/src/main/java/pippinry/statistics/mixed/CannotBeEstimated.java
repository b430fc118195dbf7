package pippinry.statistics.mixed;

/** These records cannot tell what is asked of them; the message says why, in words. */
public final class CannotBeEstimated extends RuntimeException {
    private static final long serialVersionUID = 1;

    public CannotBeEstimated(String message) {
        super(message);
    }
}
