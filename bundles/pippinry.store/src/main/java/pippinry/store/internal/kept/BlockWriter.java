package pippinry.store.internal.kept;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32C;

/** A block while it is written: four bytes of sum over the rest (CRC-32C), then numbers and texts. */
final class BlockWriter {

    static final int SUM_LENGTH = 4;

    private byte[] bytes = new byte[2048];
    private int length = SUM_LENGTH;

    /** Seven bits a byte, lowest first; small numbers are short. */
    BlockWriter number(int value) {
        int rest = value;
        while ((rest & ~0x7f) != 0) {
            put(rest & 0x7f | 0x80);
            rest >>>= 7;
        }
        put(rest);
        return this;
    }

    BlockWriter text(String text) {
        byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
        number(utf8.length);
        grow(utf8.length);
        System.arraycopy(utf8, 0, bytes, length, utf8.length);
        length += utf8.length;
        return this;
    }

    byte[] done() {
        int sum = sum(bytes, length);
        for (int i = 0; i < SUM_LENGTH; i++) {
            bytes[i] = (byte) (sum >>> 8 * i);
        }
        return Arrays.copyOf(bytes, length);
    }

    static int sum(byte[] block, int length) {
        CRC32C crc = new CRC32C();
        crc.update(block, SUM_LENGTH, length - SUM_LENGTH);
        return (int) crc.getValue();
    }

    private void put(int b) {
        grow(1);
        bytes[length++] = (byte) b;
    }

    private void grow(int more) {
        if (length + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + more));
        }
    }
}
