package pippinry.exchange.internal.calendar;

/**
 * Folds lines at 75 octets and never inside a letter, as RFC 5545 section 3.1 asks (Desruisseaux, B., ed. 2009). The library
 * counts letters, of which one may be four octets.
 */
final class OctetFolding {

    private static final int LONGEST = 75;
    private static final String BREAK = "\r\n ";

    private OctetFolding() {}

    /** @param text lines that end with CRLF and are not folded */
    static String fold(String text) {
        StringBuilder folded = new StringBuilder(text.length() + text.length() / LONGEST * BREAK.length());
        int length = 0;
        for (int at = 0; at < text.length(); ) {
            int letter = text.codePointAt(at);
            at += Character.charCount(letter);
            if (letter == '\r' || letter == '\n') {
                length = 0;
            } else {
                int octets = octets(letter);
                if (length + octets > LONGEST) {
                    folded.append(BREAK);
                    length = 1;
                }
                length += octets;
            }
            folded.appendCodePoint(letter);
        }
        return folded.toString();
    }

    private static int octets(int letter) {
        if (letter < 0x80) {
            return 1;
        }
        return letter < 0x800 ? 2 : letter < 0x10000 ? 3 : 4;
    }
}
