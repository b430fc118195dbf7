package pippinry.model;

/** The program could not be opened or written; the message says what happened, where, and what to do next. */
public final class StoreFailed extends RuntimeException {

    private static final long serialVersionUID = 1;

    public StoreFailed(String message) {
        super(message);
    }

    public StoreFailed(String message, Throwable cause) {
        super(message, cause);
    }
}
