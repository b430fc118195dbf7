package pippinry.exchange.internal.archive;

/**
 * The first line of an archive.
 *
 * @param version of the form, which a newer Pippinry may raise
 * @param program its name, empty if it has none
 * @param edits how many edits the history has
 */
public record ArchiveHead(String format, int version, String program, long edits) {

    public static final String FORMAT = "pippinry archive";
    public static final int VERSION = 1;
}
