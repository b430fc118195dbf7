package pippinry.store.internal.ledger;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.zip.CRC32C;
import org.junit.jupiter.api.Test;

class ChainTest {

    private static final byte[] LINE = line("{\"edit\":1");

    private static byte[] line(String body) {
        byte[] bytes = body.getBytes(US_ASCII);
        int sum = Chain.next(Chain.START, bytes, 0, bytes.length);
        return (body + new String(Chain.tail(sum), US_ASCII)).getBytes(US_ASCII);
    }

    /** The check value of CRC-32C for the digits 1 to 9 is e3069283 (RFC 3720 gives the polynomial, B.4 its test patterns). */
    @Test
    void theSumIsTheCastagnoliCrc() {
        CRC32C crc = new CRC32C();
        crc.update("123456789".getBytes(US_ASCII));
        assertEquals("e3069283", Chain.text((int) crc.getValue()));
    }

    /** Worked out by a few lines of Python from the words in the program folder's about.txt, not by this code. */
    @Test
    void theSumCanBeReckonedFromTheDescriptionAlone() {
        assertEquals("{\"edit\":1,\"sum\":\"bbefb9ff\"}", new String(LINE, US_ASCII));
    }

    @Test
    void anyChangedByteAndAnyOtherLineBeforeShow() {
        assertTrue(Chain.holds(Chain.START, LINE, 0, LINE.length));
        assertFalse(Chain.holds(1, LINE, 0, LINE.length));
        for (int i = 0; i < LINE.length; i++) {
            byte[] changed = LINE.clone();
            changed[i] ^= 1;
            assertFalse(Chain.holds(Chain.START, changed, 0, changed.length), "byte " + i);
        }
    }

    @Test
    void aPieceOfALineIsNoLine() {
        for (int length = 0; length < LINE.length; length++) {
            assertFalse(Chain.holds(Chain.START, LINE, 0, length));
        }
    }
}
