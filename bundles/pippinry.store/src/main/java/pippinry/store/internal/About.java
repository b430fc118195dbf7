package pippinry.store.internal;

/** What a person finds who opens a program folder in twenty years. */
final class About {

    static final String TEXT =
            """
            This folder holds the records of a breeding program, kept by Pippinry.

            ledger/     The truth. Plain text, one line of JSON for each edit in the order in which they were made:
                        number, time, author, reason, and each changed record with its cells before and after.
                        A large edit is a line "begin", lines "part", and a line "commit"; it counts only with its commit.
                        "sum" at the end of a line is CRC-32C over the eight digits of the line before's sum
                        (00000000 before the first line) and the bytes of this line up to ,"sum". The first line of
                        a file says in which format it is; it is written and summed like this in every format.
            backup/     A copy of the ledger, made once a day and when the program is closed.
            store/      A fast copy, made again from the ledger whenever it is missing or damaged.
            set-aside/  What was found damaged and mended; look at it or throw it away.
            lock        Held by the process that has the program open. It does no harm when it stays behind.

            To copy the program elsewhere, close it and copy the whole folder; ledger/ alone is enough.
            """;

    private About() {}
}
