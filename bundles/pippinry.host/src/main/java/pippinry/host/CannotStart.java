package pippinry.host;

/** The program did not come up; the message is for the person who called it. */
public final class CannotStart extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private static final int WRONG_CALL = 2;
    private static final int BROKEN_IMAGE = 3;

    private final int exit;

    private CannotStart(String message, Throwable cause, int exit) {
        super(message, cause);
        this.exit = exit;
    }

    static CannotStart wrongCall(String message) {
        return new CannotStart(message, null, WRONG_CALL);
    }

    static CannotStart broken(String message, Throwable cause) {
        return new CannotStart(message, cause, BROKEN_IMAGE);
    }

    static CannotStart broken(String message) {
        return broken(message, null);
    }

    /** The exit code of the process: 2 when the call was wrong, 3 when the image is. */
    public int exit() {
        return exit;
    }
}
