package pippinry.commandline.internal;

import java.util.Optional;
import java.util.SortedMap;

/** The subcommands that are there now. */
interface Commands {

    /** A subcommand made for one call. */
    interface Lease extends AutoCloseable {

        pippinry.commandline.Subcommand command();

        /** Whether it works without a program. */
        boolean reckons();

        @Override
        void close();
    }

    /** Names and the line that tells what each does. */
    SortedMap<String, String> summaries();

    /** Whether a subcommand of this name is there and works without a program. */
    boolean reckons(String name);

    /** Makes the subcommand of this name; empty if there is none. */
    Optional<Lease> open(String name);
}
