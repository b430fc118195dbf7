package pippinry.pedigree.internal.relate;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import pippinry.pedigree.internal.kinship.Kinship;

/** What the command says to a person. */
final class RelateWords {
    private static final int SHOWN = 25;

    private RelateWords() {}

    static String of(
            PedigreeTable table,
            Kinship kinship,
            List<Map<String, Object>> pairs,
            int[] group,
            Map<String, Object> founders,
            List<String> notes) {
        StringBuilder words = new StringBuilder();
        inbreeding(words, table, kinship);
        pairs(words, pairs);
        if (group.length > 0) {
            words.append("The group of %d rests on %.4g effective founders and %.4g founder genome equivalents.%n"
                    .formatted(group.length, founders.get("effective_number"), founders.get("genome_equivalents")));
        }
        notes.forEach(note -> words.append(note).append('\n'));
        return words.toString();
    }

    private static void inbreeding(StringBuilder words, PedigreeTable table, Kinship kinship) {
        int[] inbred = IntStream.range(0, table.size())
                .filter(who -> kinship.inbreeding(who) > 0)
                .toArray();
        double mean = IntStream.range(0, table.size())
                .mapToDouble(kinship::inbreeding)
                .average()
                .orElse(0);
        words.append("%d individuals, %d of them inbred, mean F %.4g%n".formatted(table.size(), inbred.length, mean));
        IntStream.of(inbred)
                .boxed()
                .sorted(Comparator.comparingDouble(kinship::inbreeding).reversed())
                .limit(SHOWN)
                .forEach(who -> words.append("  F %.6g  %s%n".formatted(kinship.inbreeding(who), table.code(who))));
        more(words, inbred.length);
    }

    private static void pairs(StringBuilder words, List<Map<String, Object>> pairs) {
        if (pairs.isEmpty()) return;
        words.append("Coancestry, which is the F of their seedlings:\n");
        pairs.stream()
                .limit(SHOWN)
                .forEach(pair ->
                        words.append("  f %.6g  %s, %s%n".formatted(pair.get("f"), pair.get("a"), pair.get("b"))));
        more(words, pairs.size());
    }

    private static void more(StringBuilder words, int all) {
        if (all > SHOWN) words.append("  and %d more, with --json%n".formatted(all - SHOWN));
    }
}
