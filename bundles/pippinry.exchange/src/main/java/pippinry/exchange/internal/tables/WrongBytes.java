package pippinry.exchange.internal.tables;

import java.io.IOException;

/** A file's bytes are no UTF-8 text. */
final class WrongBytes extends IOException {

    private static final long serialVersionUID = 1;

    private final long line;

    WrongBytes(long line, String message) {
        super(message);
        this.line = line;
    }

    long line() {
        return line;
    }
}
