package pippinry.labels.internal.entry;

/** What was typed cannot be meant; the message says what was expected. */
public final class NotTaken extends Exception {
    private static final long serialVersionUID = 1;

    NotTaken(String message) {
        super(message);
    }
}
