package pippinry.pedigree.internal.relate;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import pippinry.commandline.CallRefused;
import pippinry.commandline.InputRow;
import pippinry.commandline.InputTable;
import pippinry.pedigree.internal.kinship.LinksBetween.Link;
import pippinry.pedigree.internal.kinship.LinksBetween.Side;
import pippinry.pedigree.internal.kinship.PedigreeDraft;
import pippinry.pedigree.internal.kinship.PedigreeGraph;
import pippinry.pedigree.internal.kinship.PedigreeLoop;

/**
 * A table `code,seed_parent,pollen_parent`, rows in any order. A parent without a row is a founder. The seed parent is a code,
 * candidates `A|B`, empty or `unknown`; the pollen parent may also be `op` or `self`.
 */
final class PedigreeTable {
    private static final String CODE = "code";
    private static final String SEED = "seed_parent";
    private static final String POLLEN = "pollen_parent";
    private static final String UNKNOWN = "unknown";
    private static final String OPEN = "op";
    private static final String SELF = "self";
    private static final Set<String> FIXED_WORDS = Set.of(UNKNOWN, OPEN, SELF);

    private final Path file;
    private final PedigreeDraft draft = new PedigreeDraft();
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> codes = new ArrayList<>();
    private final List<Long> lines = new ArrayList<>();
    private final BitSet parents = new BitSet();
    private final Map<Link, String> doubts = new HashMap<>();
    private int open;
    private int candidates;

    private PedigreeTable(Path file) {
        this.file = file;
    }

    static PedigreeTable read(Path file) throws CallRefused {
        PedigreeTable pedigree = new PedigreeTable(file);
        try (InputTable table = InputTable.open(file, CODE, SEED, POLLEN)) {
            while (table.hasNext()) pedigree.take(table.next());
        }
        return pedigree;
    }

    private void take(InputRow row) throws CallRefused {
        String code = row.needed(CODE);
        if (isFixedWord(code)) throw row.refused(CODE, "a code; this word stands for a parent that is not named");
        if (code.contains("|")) throw row.refused(CODE, "a code without |, which parts candidates");
        int who = number(code);
        if (lines.get(who) != null)
            throw row.refused(CODE, "each code once; it is on line " + lines.get(who) + " already");
        lines.set(who, row.line());
        draft.seedParent(who, parent(row, SEED, who));
        draft.pollenParent(who, pollenParent(row, who));
        doubt(row, who, SEED, "seed_link", Side.SEED);
        doubt(row, who, POLLEN, "pollen_link", Side.POLLEN);
    }

    /** The plain table of genotypes has these columns too; a table without them is taken to be sure. */
    private void doubt(InputRow row, int who, String parent, String column, Side side) {
        String how = row.text(column);
        if (!how.equals("likely") && !how.equals("doubtful")) return;
        String words =
                "the %s parent of %s, %s, is %s".formatted(parent.split("_")[0], code(who), row.text(parent), how);
        doubts.put(new Link(who, side), words);
    }

    private int pollenParent(InputRow row, int who) throws CallRefused {
        String text = row.text(POLLEN);
        if (text.equalsIgnoreCase(OPEN)) {
            open++;
            return PedigreeDraft.OPEN;
        }
        if (!text.equalsIgnoreCase(SELF)) return parent(row, POLLEN, who);
        String seed = row.text(SEED);
        if (seed.isEmpty() || isFixedWord(seed) || seed.contains("|")) {
            throw row.refused(POLLEN, "self only beside one known seed parent");
        }
        return parent(seed);
    }

    private int parent(InputRow row, String column, int who) throws CallRefused {
        String text = row.text(column);
        if (text.isEmpty() || text.equalsIgnoreCase(UNKNOWN)) return PedigreeDraft.UNKNOWN;
        if (text.contains("|")) return candidates(row, column, text, who);
        if (isFixedWord(text)) throw row.refused(column, "a code, candidates such as A|B, unknown, or nothing");
        return parent(text);
    }

    private int candidates(InputRow row, String column, String text, int who) throws CallRefused {
        Set<Integer> members = new LinkedHashSet<>();
        for (String part : text.split("\\|", -1)) {
            String code = part.strip();
            if (code.isEmpty() || isFixedWord(code) || !members.add(parent(code))) {
                throw row.refused(column, "different codes parted by |, such as A|B|C");
            }
        }
        candidates++;
        return draft.oneOf(members.stream().mapToInt(Integer::intValue).toArray());
    }

    private int parent(String code) {
        int who = number(code);
        parents.set(who);
        return who;
    }

    private static boolean isFixedWord(String text) {
        return FIXED_WORDS.contains(text.toLowerCase(java.util.Locale.ROOT));
    }

    private int number(String code) {
        return numbers.computeIfAbsent(code, fresh -> {
            codes.add(fresh);
            lines.add(null);
            return draft.add();
        });
    }

    /** Says who may have given open pollen. */
    void pollenGroup(int[] members) {
        draft.pollenGroup(members);
    }

    PedigreeGraph graph() throws CallRefused {
        try {
            return draft.build();
        } catch (PedigreeLoop loop) {
            throw new CallRefused(told(loop.members()));
        }
    }

    private String told(int[] loop) throws CallRefused {
        List<String> names = new ArrayList<>();
        for (int who : loop) names.add(code(who));
        names.add(code(loop[0]));
        String parent = names.get(1);
        return "%s line %d, column %s: '%s'; %s would be its own ancestor (%s); expected parents that do not descend from it"
                .formatted(
                        file,
                        lines.get(loop[0]),
                        columnOf(loop[0], parent),
                        parent,
                        names.get(0),
                        String.join(" from ", names));
    }

    /** Reads again which of the two columns names the parent. */
    private String columnOf(int who, String parent) throws CallRefused {
        try (InputTable table = InputTable.open(file, CODE)) {
            while (table.hasNext()) {
                InputRow row = table.next();
                if (row.line() != lines.get(who)) continue;
                boolean bySeed = List.of(row.text(SEED).split("\\s*\\|\\s*")).contains(parent);
                return bySeed ? SEED : POLLEN;
            }
        }
        return SEED;
    }

    int size() {
        return codes.size();
    }

    String code(int who) {
        return codes.get(who);
    }

    Optional<Integer> find(String code) {
        return Optional.ofNullable(numbers.get(code));
    }

    /** The individual a row of another table names in a column. */
    int named(InputRow row, String column) throws CallRefused {
        Integer who = numbers.get(row.needed(column));
        if (who == null) throw row.refused(column, "a code that stands in " + file);
        return who;
    }

    /** Who is nobody's parent and nobody's possible parent by name. */
    int[] withoutOffspring() {
        return IntStream.range(0, size()).filter(who -> !parents.get(who)).toArray();
    }

    /** What is not sure about a link, in words. */
    Optional<String> doubt(Link link) {
        return Optional.ofNullable(doubts.get(link));
    }

    /** Whose own links are not all sure. */
    BitSet doubted() {
        BitSet children = new BitSet();
        doubts.keySet().forEach(link -> children.set(link.child()));
        return children;
    }

    int openPollinated() {
        return open;
    }

    int withCandidates() {
        return candidates;
    }
}
