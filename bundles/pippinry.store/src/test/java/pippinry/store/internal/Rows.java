package pippinry.store.internal;

import java.util.HashMap;
import java.util.Map;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;

/** Records for tests, from their cells. */
public final class Rows {

    private Rows() {}

    public static <T extends Record> T row(Kind<T> kind, String... cells) {
        Map<String, String> given = new HashMap<>();
        for (int i = 0; i < cells.length; i += 2) {
            given.put(cells[i], cells[i + 1]);
        }
        try {
            return kind.read(column -> given.getOrDefault(column, ""));
        } catch (CellRefused e) {
            throw new IllegalArgumentException(e);
        }
    }

    public static Genotype genotype(String code, String name) {
        return row(Kinds.GENOTYPES, "code", code, "name", name);
    }

    public static Plant plant(String tag, String genotype) {
        return row(Kinds.PLANTS, "tag", tag, "genotype", genotype);
    }

    public static Score score(String subject, String trait, String value) {
        return row(Kinds.SCORES, "subject", subject, "trait", trait, "value", value);
    }
}
