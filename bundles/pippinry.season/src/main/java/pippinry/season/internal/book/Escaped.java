package pippinry.season.internal.book;

/** Text made safe for HTML and SVG, as content and inside quoted attributes. */
final class Escaped {

    private Escaped() {}

    static String of(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(sign -> append(safe, sign));
        return safe.toString();
    }

    private static void append(StringBuilder safe, int sign) {
        switch (sign) {
            case '&' -> safe.append("&amp;");
            case '<' -> safe.append("&lt;");
            case '>' -> safe.append("&gt;");
            case '"' -> safe.append("&quot;");
            case '\'' -> safe.append("&#39;");
            default -> safe.appendCodePoint(isAllowed(sign) ? sign : ' ');
        }
    }

    /** Neither HTML nor XML can hold control characters, halves of characters or the like. */
    private static boolean isAllowed(int sign) {
        return sign == '\n'
                || sign == '\t'
                || !Character.isISOControl(sign)
                        && !(sign >= Character.MIN_SURROGATE && sign <= Character.MAX_SURROGATE)
                        && (sign & 0xFFFE) != 0xFFFE;
    }
}
