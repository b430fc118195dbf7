package pippinry.labels.internal.tag;

/** A tag finds no room on a label; the message names tag, code, label, and the smallest label that would do. */
public final class DoesNotFit extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    DoesNotFit(String message) {
        super(message);
    }
}
