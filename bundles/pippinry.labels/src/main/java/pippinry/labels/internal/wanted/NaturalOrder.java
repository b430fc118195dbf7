package pippinry.labels.internal.wanted;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** As a person counts: place 9 before place 10, row A2 before row A10. */
final class NaturalOrder implements Comparator<String> {
    static final Comparator<String> BY_NUMBER = new NaturalOrder();

    private static final Pattern PIECE = Pattern.compile("\\d+|\\D+");

    private NaturalOrder() {}

    @Override
    public int compare(String one, String other) {
        List<String> left = pieces(one);
        List<String> right = pieces(other);
        for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
            int order = comparePieces(left.get(i), right.get(i));
            if (order != 0) {
                return order;
            }
        }
        int order = Integer.compare(left.size(), right.size());
        return order != 0 ? order : one.compareTo(other);
    }

    private static List<String> pieces(String text) {
        return PIECE.matcher(text).results().map(MatchResult::group).toList();
    }

    private static int comparePieces(String one, String other) {
        boolean numbers = Character.isDigit(one.charAt(0)) && Character.isDigit(other.charAt(0));
        return numbers ? new BigInteger(one).compareTo(new BigInteger(other)) : one.compareToIgnoreCase(other);
    }
}
