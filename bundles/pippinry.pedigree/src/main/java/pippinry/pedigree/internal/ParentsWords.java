package pippinry.pedigree.internal;

import java.util.List;
import java.util.Locale;
import pippinry.model.ask.ParentChance;
import pippinry.model.value.Code;
import pippinry.pedigree.internal.parentage.ParentsWeighed;

/** What the command says to a person of one genotype. */
final class ParentsWords {
    private ParentsWords() {}

    static String of(ParentsWeighed weighed, List<String> doubts) {
        StringBuilder words = new StringBuilder();
        words.append(
                weighed.markers().isEmpty()
                        ? "Nothing was read of " + weighed.child().code() + " and its parents that could tell.\n"
                        : "Read of " + weighed.child().code() + " and a parent: " + String.join(", ", weighed.markers())
                                + "\n");
        weighed.child()
                .seedParent()
                .ifPresent(parent -> line(words, "seed parent " + parent, weighed.seedParent(), true));
        weighed.chances()
                .forEach(chance -> line(words, "pollen of " + who(chance), chance.chance(), chance.possible()));
        if (!weighed.possible())
            weighed.words().ifPresent(why -> words.append(why).append(".\n"));
        doubts.stream()
                .filter(doubt -> !weighed.words().equals(java.util.Optional.of(doubt)))
                .forEach(doubt -> words.append(doubt).append(".\n"));
        return words.toString();
    }

    private static String who(ParentChance chance) {
        return chance.parent().map(Code::text).orElse("somebody else");
    }

    private static void line(StringBuilder words, String what, double chance, boolean possible) {
        words.append(String.format(
                Locale.ROOT,
                "  %5.1f %%  %s%s%n",
                100 * chance,
                what,
                possible ? "" : ", impossible if all readings are right"));
    }
}
