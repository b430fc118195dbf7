package pippinry.exchange.internal.tables;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/**
 * Lets bytes pass while they are UTF-8 (Yergeau, F. 2003. UTF-8, a transformation format of ISO 10646. RFC 3629) and stops
 * at the first that is not, with its line and place, so that a wrong encoding never becomes wrong letters on file. A NUL
 * stops it too: no text has one, and a file of another encoding or kind has many.
 */
final class Utf8Stream extends FilterInputStream {

    private static final int CONTINUES = 0x80;

    private long line = 1;
    private long offset;
    private int previous;
    private int awaited;
    private int low = CONTINUES;
    private int high = 0xBF;
    private Optional<WrongBytes> fault = Optional.empty();

    /** @param before how many bytes of the file were read already */
    Utf8Stream(InputStream in, int before) {
        super(in);
        this.offset = before;
    }

    /** Bytes that have passed. */
    long passed() {
        return offset;
    }

    /** Why it stopped, if it did. */
    Optional<WrongBytes> fault() {
        return fault;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
        int count = super.read(bytes, from, length);
        if (count < 0 && awaited > 0) {
            throw stop("the file ends in the middle of a letter at byte " + (offset + 1)
                    + ": it was cut off, or it is not UTF-8");
        }
        for (int i = from; i < from + count; i++) {
            pass(bytes[i] & 0xFF);
        }
        return count;
    }

    private void pass(int octet) throws WrongBytes {
        offset++;
        if (awaited > 0) {
            awaitedByte(octet);
        } else if (octet >= CONTINUES) {
            firstByte(octet);
        } else if (octet == 0) {
            throw stop("there is a zero byte at byte " + offset
                    + ": this is no text in UTF-8 (a spreadsheet's 'Unicode text' is UTF-16; save as CSV UTF-8)");
        } else {
            countLine(octet);
        }
        previous = octet;
    }

    private void countLine(int octet) {
        boolean secondOfPair = octet == '\n' && previous == '\r';
        if ((octet == '\n' || octet == '\r') && !secondOfPair) {
            line++;
        }
    }

    private void awaitedByte(int octet) throws WrongBytes {
        if (octet < low || octet > high) {
            throw notUtf8(offset - 1, previous);
        }
        awaited--;
        low = CONTINUES;
        high = 0xBF;
    }

    /** How many bytes follow, and what the next may be: no overlong forms, no surrogates, nothing above U+10FFFF. */
    private void firstByte(int octet) throws WrongBytes {
        if (octet < 0xC2 || octet > 0xF4) {
            throw notUtf8(offset, octet);
        }
        awaited = octet < 0xE0 ? 1 : octet < 0xF0 ? 2 : 3;
        low = octet == 0xE0 ? 0xA0 : octet == 0xF0 ? 0x90 : CONTINUES;
        high = octet == 0xED ? 0x9F : octet == 0xF4 ? 0x8F : 0xBF;
    }

    private WrongBytes notUtf8(long place, int octet) {
        String guess = place <= 2 && (octet == 0xFF || octet == 0xFE)
                ? "it looks like UTF-16"
                : "it looks like Windows-1252 or Latin-1";
        return stop(
                "byte %d is %02X, which is not UTF-8 (%s); save the file as CSV UTF-8".formatted(place, octet, guess));
    }

    private WrongBytes stop(String message) {
        WrongBytes stopped = new WrongBytes(line, message);
        fault = Optional.of(stopped);
        return stopped;
    }
}
