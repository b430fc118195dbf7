package pippinry.model.value;

/**
 * The number or short code under which a record is filed, such as {@code 26-014-073}; {@code T} says which kind of
 * record it names. Never given to another, even after the tree is grubbed.
 */
public record Code<T>(String text) implements Comparable<Code<T>> {

    public Code {
        if (!isTidy(text)) {
            throw new IllegalArgumentException("a code without blanks around it or signs that nobody sees");
        }
    }

    /** Whether what a person sees is all there is: no blanks around it, no line's end, no sign without a width. */
    static boolean isTidy(String text) {
        return !text.isBlank()
                && text.equals(text.strip())
                && text.codePoints()
                        .noneMatch(sign -> Character.isISOControl(sign)
                                || Character.getType(sign) == Character.FORMAT
                                || Character.isSpaceChar(sign) && sign != ' ');
    }

    public static <T> Code<T> of(String text) {
        return new Code<>(text);
    }

    @Override
    public int compareTo(Code<T> other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
