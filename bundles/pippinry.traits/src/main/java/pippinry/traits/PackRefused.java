package pippinry.traits;

/** A table of a crop pack cannot be read. The message names file, line, column, value and what was expected. */
public final class PackRefused extends RuntimeException {

    private static final long serialVersionUID = 1;

    public PackRefused(String message) {
        super(message);
    }

    public PackRefused(String message, Throwable cause) {
        super(message, cause);
    }
}
