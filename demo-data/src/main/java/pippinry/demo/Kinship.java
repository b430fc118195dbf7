package pippinry.demo;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Coancestry from the pedigree, founders unrelated (Malecot 1948, Les mathematiques de l'heredite): of the younger of two,
 * the mean of its parents' coancestries with the other. Inbreeding of a child is the coancestry of its parents.
 */
final class Kinship {

    private record Parents(String seed, String pollen, int depth) {}

    private final Map<String, Parents> parents = new HashMap<>();
    private final Map<String, Double> known = new HashMap<>();

    Kinship() {
        Map<String, NamedCsvRecord> rows = new HashMap<>();
        Resource.read("founders.csv").forEach(row -> rows.put(row.getField("code"), row));
        rows.keySet().forEach(code -> enter(code, rows));
    }

    private int enter(String code, Map<String, NamedCsvRecord> rows) {
        NamedCsvRecord row = rows.get(code);
        if (row == null) {
            return 0;
        }
        if (!parents.containsKey(code)) {
            String seed = row.getField("seed_parent");
            String pollen = row.getField("pollen_parent").replace("unknown", "");
            int depth = Math.max(enter(seed, rows), enter(pollen, rows)) + 1;
            parents.put(code, new Parents(seed, pollen, depth));
        }
        return parents.get(code).depth();
    }

    void born(String code, String seed, String pollen) {
        parents.put(code, new Parents(seed, pollen, Math.max(depth(seed), depth(pollen)) + 1));
    }

    double inbreeding(String seed, String pollen) {
        return coancestry(seed, pollen);
    }

    private double coancestry(String a, String b) {
        if (a.isEmpty() || b.isEmpty()) {
            return 0;
        }
        String key = a.compareTo(b) < 0 ? a + " " + b : b + " " + a;
        Double found = known.get(key);
        if (found == null) {
            found = reckon(a, b);
            known.put(key, found);
        }
        return found;
    }

    private double reckon(String a, String b) {
        if (a.equals(b)) {
            Parents own = parents.get(a);
            return own == null ? 0.5 : 0.5 * (1 + coancestry(own.seed(), own.pollen()));
        }
        String younger = depth(a) >= depth(b) ? a : b;
        String other = younger.equals(a) ? b : a;
        Parents of = parents.get(younger);
        return of == null
                ? 0
                : List.of(of.seed(), of.pollen()).stream()
                                .mapToDouble(parent -> coancestry(parent, other))
                                .sum()
                        / 2;
    }

    private int depth(String code) {
        Parents own = parents.get(code);
        return own == null ? 0 : own.depth();
    }
}
