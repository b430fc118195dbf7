package pippinry.exchange.internal.tables;

/** A file cannot be read as a plain table at all; the message names file, line and what was expected. */
public final class FileRefused extends Exception {

    private static final long serialVersionUID = 1;

    private final transient Refusal refusal;

    public FileRefused(Refusal refusal) {
        super(refusal.toString());
        this.refusal = refusal;
    }

    public Refusal refusal() {
        return refusal;
    }
}
