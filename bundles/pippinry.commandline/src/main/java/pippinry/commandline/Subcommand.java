package pippinry.commandline;

import org.osgi.annotation.versioning.ConsumerType;

/**
 * One subcommand, offered as a service whose class carries picocli's annotations for its options and help.
 *
 * <p>Its service properties {@link #NAME} and {@link #SUMMARY} tell what it is called without starting it; a new instance
 * serves each call ({@code scope = ServiceScope.PROTOTYPE}), so that options are fields.
 */
@ConsumerType
public interface Subcommand {

    /** Service property: the word typed, such as {@code relate}. */
    String NAME = "pippinry.command";
    /** Service property: one line for the list of commands. */
    String SUMMARY = "pippinry.summary";

    /** Service property, {@code true} for a command that reckons without a program and is not offered {@code --program}. */
    String RECKONS = "pippinry.reckons";

    /**
     * Does the work.
     *
     * @throws CallRefused if an option or the input is wrong
     * @throws Exception is told to the person as an error of the program
     */
    Answer run(Call call) throws Exception;
}
