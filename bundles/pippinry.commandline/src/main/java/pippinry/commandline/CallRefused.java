package pippinry.commandline;

/** The call or its input is wrong: exit code 2. The message names file, line, column, value and what was expected. */
public final class CallRefused extends Exception {

    private static final long serialVersionUID = 1;

    public CallRefused(String message) {
        super(message);
    }
}
