package pippinry.model.number;

import java.util.Locale;
import java.util.Optional;

/**
 * The check character of a number by ISO/IEC 7064 MOD 37-2, over its letters and digits; separators and case are
 * ignored. It catches every single wrong character and every swap of neighbours.
 *
 * <p>The pure system with modulus 37 and radix 2: reading from the left, {@code sum = 2 (sum + value)} modulo 37, and
 * the check makes {@code sum + check} equal to 1 modulo 37. Value 36 is written as a star.
 */
public final class CheckCharacter {

    /** The 37th character; a number that would have it is never given out. */
    public static final char STAR = '*';

    private static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";
    private static final int MODULUS = 37;

    private CheckCharacter() {}

    /** @throws IllegalArgumentException if the number has no letter or digit, or other signs than {@code - / .} and blanks */
    public static char of(String number) {
        if (!isReckonable(number)) {
            throw new IllegalArgumentException("letters A to Z, digits, and - / . between them");
        }
        int sum = 0;
        for (char sign : number.toUpperCase(Locale.ROOT).toCharArray()) {
            int value = ALPHABET.indexOf(sign);
            sum = value < 0 ? sum : (sum + value) * 2 % MODULUS;
        }
        return ALPHABET.charAt(Math.floorMod(1 - sum, MODULUS));
    }

    /** Whether the number has only letters A to Z, digits and separators, and a check character can be reckoned. */
    public static boolean isReckonable(String number) {
        return number.matches("[A-Za-z0-9 ./-]*[A-Za-z0-9][A-Za-z0-9 ./-]*");
    }

    /** A number close to this one whose check character is not a star: with a digit after it. */
    public static Optional<String> suggestion(String number) {
        for (int digit = 2; digit <= 9; digit++) {
            if (of(number + digit) != STAR) {
                return Optional.of(number + digit);
            }
        }
        return Optional.empty();
    }
}
