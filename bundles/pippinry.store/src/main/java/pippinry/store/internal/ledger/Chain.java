package pippinry.store.internal.ledger;

import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32C;

/**
 * The sum at the end of each line: CRC-32C (Castagnoli, Bräuer and Herrmann 1993, Optimization of cyclic
 * redundancy-check codes with 24 and 32 parity bits, IEEE Transactions on Communications 41:883-892) over the eight hex
 * digits of the sum before and the bytes of the line up to its own sum. It finds damage, it does not prove who wrote.
 */
final class Chain {

    /** What stands for the sum before the first line of all. */
    static final int START = 0;

    /** Length of {@code ,"sum":"1a2b3c4d"}}, which ends every line. */
    static final int TAIL = 18;

    private static final byte[] LEAD = ",\"sum\":\"".getBytes(StandardCharsets.US_ASCII);
    private static final int DIGITS = 8;

    private Chain() {}

    /** @param from first byte of the line, {@code to} the byte after its last before the sum */
    static int next(int before, byte[] line, int from, int to) {
        CRC32C crc = new CRC32C();
        crc.update(text(before).getBytes(StandardCharsets.US_ASCII));
        crc.update(line, from, to - from);
        return (int) crc.getValue();
    }

    static String text(int sum) {
        return "%08x".formatted(sum);
    }

    /** The end of a line with this sum, without the line break. */
    static byte[] tail(int sum) {
        return (",\"sum\":\"" + text(sum) + "\"}").getBytes(StandardCharsets.US_ASCII);
    }

    /** Whether the line, without its break, ends with the sum that follows from the one before. */
    static boolean holds(int before, byte[] line, int from, int to) {
        long stated = stated(line, from, to);
        return stated >= 0 && (int) stated == next(before, line, from, to - TAIL);
    }

    /** The sum that the line says it has; -1 if it does not end as a line does. */
    static long stated(byte[] line, int from, int to) {
        int at = to - TAIL;
        if (at < from || line[to - 2] != '"' || line[to - 1] != '}') {
            return -1;
        }
        for (byte expected : LEAD) {
            if (line[at++] != expected) {
                return -1;
            }
        }
        return hex(line, at);
    }

    private static long hex(byte[] line, int at) {
        long sum = 0;
        for (int i = at; i < at + DIGITS; i++) {
            int digit = Character.digit(line[i], 16);
            if (digit < 0) {
                return -1;
            }
            sum = sum << 4 | digit;
        }
        return sum;
    }
}
