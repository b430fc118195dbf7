package pippinry.commandline.internal;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;

/**
 * What lies around a call.
 *
 * @param terminal whether somebody watches standard error
 * @param user the computer's name for the person
 */
record Surroundings(
        Path image, InputStream in, PrintStream out, PrintStream err, boolean terminal, Clock clock, String user) {}
