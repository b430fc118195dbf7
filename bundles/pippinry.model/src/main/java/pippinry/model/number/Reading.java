package pippinry.model.number;

import java.util.Locale;
import java.util.Optional;

/**
 * A number as somebody typed or read it from a tag.
 *
 * @param number in capitals and without the check
 * @param given the check character after the equals sign; empty if there is none
 */
public record Reading(String number, Optional<Character> given) {

    /** @throws IllegalArgumentException if it is no number, with what was expected */
    public static Reading of(String typed) {
        String text = typed.strip().toUpperCase(Locale.ROOT);
        int sign = text.indexOf('=');
        String number = sign < 0 ? text : text.substring(0, sign).strip();
        String check = sign < 0 ? "" : text.substring(sign + 1).strip();
        if (!CheckCharacter.isReckonable(number) || (sign >= 0 && !check.matches("[A-Z0-9*]"))) {
            throw new IllegalArgumentException("a number such as 26-014-073, or with its check 26-014-073=Y");
        }
        return new Reading(number, check.isEmpty() ? Optional.empty() : Optional.of(check.charAt(0)));
    }

    public char check() {
        return CheckCharacter.of(number);
    }

    /** Whether the check character that was given, if any, is the right one. */
    public boolean isValid() {
        return given.isEmpty() || given.get() == check();
    }

    /** As it is printed: the number, an equals sign, its check character. */
    @Override
    public String toString() {
        return number + "=" + check();
    }
}
