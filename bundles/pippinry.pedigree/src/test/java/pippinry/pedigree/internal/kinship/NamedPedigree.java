package pippinry.pedigree.internal.kinship;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A pedigree with names, for tests: parents may be given as names, `op` or `A|B`. */
final class NamedPedigree {
    final PedigreeDraft draft = new PedigreeDraft();
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private Kinship kinship;

    static List<NamedCsvRecord> table(String name) {
        try (Reader in = new InputStreamReader(NamedPedigree.class.getResourceAsStream(name), StandardCharsets.UTF_8);
                CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(in)) {
            return csv.stream().toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Reads a table whose first three columns are the individual and its parents. */
    static NamedPedigree read(String name) {
        NamedPedigree pedigree = new NamedPedigree();
        for (NamedCsvRecord row : table(name)) pedigree.row(row.getField(0), row.getField(1), row.getField(2));
        return pedigree;
    }

    /** Rows such as `C: A B`, `S: sport A`, `T: 2A B` (two sets from A), `Q: 2A 2B`, `X: A op`, `Y: A B|C`. */
    static NamedPedigree of(String... rows) {
        NamedPedigree pedigree = new NamedPedigree();
        for (String row : rows) {
            String[] parts = row.split(":? ");
            boolean unreduced = parts[1].startsWith("2");
            boolean pollenToo = parts[2].startsWith("2");
            pedigree.row(parts[0], parts[1].substring(unreduced ? 1 : 0), parts[2].substring(pollenToo ? 1 : 0));
            if (unreduced || pollenToo) {
                pedigree.draft.genomes(pedigree.number(parts[0]), unreduced ? 2 : 1, pollenToo ? 2 : 1);
            }
        }
        return pedigree;
    }

    private void row(String name, String seed, String pollen) {
        int who = number(name);
        if (seed.equals("sport")) {
            draft.sport(who, number(pollen));
        } else if (pollen.equals("(sport)")) {
            draft.sport(who, number(seed));
        } else {
            draft.seedParent(who, parent(seed));
            draft.pollenParent(who, parent(pollen));
        }
    }

    private int parent(String name) {
        if (name.isEmpty() || name.equals("unknown")) return PedigreeDraft.UNKNOWN;
        if (name.equals("op")) return PedigreeDraft.OPEN;
        if (!name.contains("|")) return number(name);
        return draft.oneOf(
                Arrays.stream(name.split("\\|")).mapToInt(this::number).toArray());
    }

    int number(String name) {
        return numbers.computeIfAbsent(name, fresh -> draft.add());
    }

    int[] numbers(String... names) {
        return Arrays.stream(names).mapToInt(this::number).toArray();
    }

    List<String> names() {
        return List.copyOf(numbers.keySet());
    }

    Kinship kinship() {
        if (kinship == null) kinship = Kinship.of(draft.build());
        return kinship;
    }

    double inbreeding(String name) {
        return kinship().inbreeding(number(name));
    }

    double coancestry(String a, String b) {
        return kinship().coancestry(number(a), number(b));
    }
}
