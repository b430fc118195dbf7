package pippinry.model.number;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
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
    /** A number with more slips than this is no help. */
    private static final double FARTHEST = 3;

    private static final List<Set<Character>> ALIKE = List.of(
            Set.of('0', 'O', 'D', 'Q'),
            Set.of('1', 'I', 'L', '7'),
            Set.of('2', 'Z'),
            Set.of('5', 'S'),
            Set.of('6', 'G', 'B'),
            Set.of('8', 'B', '3'),
            Set.of('4', '9'),
            Set.of('U', 'V'),
            Set.of('-', '/', '.', ' '));

    private NearestNumbers() {}

    private record Near(String number, double distance) {}

    /**
     * The nearest first, those equally near in the order of their text; none that is more than three slips away.
     *
     * @param typed without a check character
     */
    public static List<String> of(String typed, Stream<String> onFile, int count) {
        return onFile.map(number -> new Near(number, distance(typed, number)))
                .filter(near -> near.distance() <= FARTHEST)
                .sorted(Comparator.comparingDouble(Near::distance).thenComparing(Near::number))
                .limit(count)
                .map(Near::number)
                .toList();
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
        boolean alike = ALIKE.stream().anyMatch(signs -> signs.contains(one) && signs.contains(other));
        return alike ? LOOKS_ALIKE : SLIP;
    }
}
