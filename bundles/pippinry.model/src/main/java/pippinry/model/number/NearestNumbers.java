package pippinry.model.number;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Finds the numbers on file that somebody may have meant by one that is not.
 *
 * <p>By edit distance with swaps of neighbours (Damerau, F. J. 1964. A technique for computer detection and correction of
 * spelling errors. Communications of the ACM 7:171-176; Wagner, R. A. & Fischer, M. J. 1974. The string-to-string
 * correction problem. Journal of the ACM 21:168-173), where two signs that look alike in a hand's writing cost a third
 * of any other slip (which ones look alike, and the weight, are common practice, no source). Costs the product of both
 * lengths for each number looked at.
 */
public final class NearestNumbers {

    private static final double SLIP = 1;
    private static final double LOOKS_ALIKE = 1 / 3.0;
    /** A number with more slips than this, or with more than half of what was typed, is no help. */
    private static final double FARTHEST = 3;

    private static final List<String> ALIKE = List.of("0ODQ", "1IL7", "2Z", "5S", "6GB", "8B3", "49", "UV", "-/. ");
    private static final boolean[][] LOOKS = looks();

    private NearestNumbers() {}

    private static boolean[][] looks() {
        boolean[][] looks = new boolean[128][128];
        for (String signs : ALIKE) {
            signs.chars().forEach(one -> signs.chars().forEach(other -> looks[one][other] = true));
        }
        return looks;
    }

    private record Near(String number, double distance) {}

    /**
     * The nearest first, those equally near in the order of their text; none that is more than three slips away, or half
     * as many as were typed.
     *
     * @param typed without a check character
     */
    public static List<String> of(String typed, Stream<String> onFile, int count) {
        double farthest = Math.min(FARTHEST, typed.length() / 2.0);
        return onFile.filter(number -> Math.abs(number.length() - typed.length()) <= farthest)
                .map(number -> new Near(number, distance(typed, number)))
                .filter(near -> near.distance() <= farthest)
                .sorted(Comparator.comparingDouble(Near::distance).thenComparing(Near::number))
                .limit(count)
                .map(Near::number)
                .toList();
    }

    /** The same for a number typed with its check character, which tells more of what was meant. */
    public static List<String> of(Reading typed, Stream<String> onFile, int count) {
        if (typed.given().isEmpty()) {
            return of(typed.number(), onFile, count);
        }
        Stream<String> checked = onFile.filter(CheckCharacter::isReckonable).map(number -> number + checkOf(number));
        return of(typed.number() + "=" + typed.given().get(), checked, count).stream()
                .map(number -> number.substring(0, number.lastIndexOf('=')))
                .toList();
    }

    private static String checkOf(String number) {
        return "=" + CheckCharacter.of(number);
    }

    /** How far apart two numbers are, in slips; capitals and small letters are the same. */
    public static double distance(String one, String other) {
        String a = one.toUpperCase(Locale.ROOT);
        String b = other.toUpperCase(Locale.ROOT);
        double[] twoBack = new double[b.length() + 1];
        double[] back = new double[b.length() + 1];
        double[] row = new double[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            back[j] = j * SLIP;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i * SLIP;
            for (int j = 1; j <= b.length(); j++) {
                double changed = back[j - 1] + cost(a.charAt(i - 1), b.charAt(j - 1));
                row[j] = Math.min(changed, Math.min(back[j], row[j - 1]) + SLIP);
                if (swapped(a, i, b, j)) {
                    row[j] = Math.min(row[j], twoBack[j - 2] + SLIP);
                }
            }
            double[] free = twoBack;
            twoBack = back;
            back = row;
            row = free;
        }
        return back[b.length()];
    }

    private static boolean swapped(String a, int i, String b, int j) {
        return i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    }

    private static double cost(char one, char other) {
        if (one == other) {
            return 0;
        }
        return one < LOOKS.length && other < LOOKS.length && LOOKS[one][other] ? LOOKS_ALIKE : SLIP;
    }
}
