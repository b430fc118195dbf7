package pippinry.commandline.internal;

import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/** The list of commands. */
final class Overview {

    private static final int FAR = 3;

    private Overview() {}

    static String of(SortedMap<String, String> summaries) {
        int width = summaries.keySet().stream().mapToInt(String::length).max().orElse(0);
        StringBuilder text = new StringBuilder("Usage: pippinry COMMAND [--program DIR] ...\n\n");
        for (Map.Entry<String, String> command : summaries.entrySet()) {
            text.append("  %-".concat(width + "s  %s%n").formatted(command.getKey(), command.getValue()));
        }
        return text.append("\n'pippinry COMMAND --help' tells more, with an example.\n")
                .toString();
    }

    /** The name that is the fewest slips away, if there is one close by. */
    static Optional<String> nearest(Collection<String> names, String typed) {
        return names.stream()
                .filter(name -> slips(name, typed) < FAR)
                .min(Comparator.comparingInt(name -> slips(name, typed)));
    }

    /** Levenshtein's distance: letters to put in, leave out or change. */
    private static int slips(String one, String other) {
        int[] above = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[other.length()];
    }
}
