package pippinry.nursery.internal.act;

/** What the person wants done does not fit the records; the message says why, and what to do next. */
public final class NotPossible extends Exception {

    private static final long serialVersionUID = 1;

    NotPossible(String message) {
        super(message);
    }
}
