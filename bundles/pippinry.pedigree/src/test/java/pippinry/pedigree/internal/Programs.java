package pippinry.pedigree.internal;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;

/** Small programs for tests, written as tables. */
public final class Programs {
    private static final Instant NOW = Instant.parse("2026-03-27T10:00:00Z");

    private Programs() {}

    /** Rows `code,seed_parent,pollen_parent[,column=value ...]`; parents without a row are put in as founders. */
    public static Program of(String... rows) {
        Edit.Draft draft = Edit.by("IN", "for a test");
        List<String> own = Arrays.stream(rows).map(row -> row.split(",", -1)[0]).toList();
        Arrays.stream(rows)
                .map(row -> row.split(",", -1))
                .flatMap(row -> Arrays.stream((row[1] + "|" + row[2]).split("\\|")))
                .filter(parent ->
                        !parent.isEmpty() && !List.of("op", "self", "unknown").contains(parent))
                .filter(parent -> !own.contains(parent))
                .distinct()
                .forEach(parent -> draft.put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, Map.of("code", parent))));
        for (String row : rows) draft.put(Kinds.GENOTYPES, genotype(row.split(",", -1)));
        return apply(Program.empty(), draft);
    }

    public static Program apply(Program program, Edit.Draft draft) {
        try {
            return program.apply(draft.done(), NOW).program();
        } catch (EditRefused refused) {
            throw new IllegalStateException(refused);
        }
    }

    private static Genotype genotype(String... cells) {
        Map<String, String> named = new HashMap<>();
        named.put("code", cells[0]);
        named.put("seed_parent", cells[1]);
        named.put("pollen_parent", cells[2]);
        Arrays.stream(cells).skip(3).map(cell -> cell.split("=")).forEach(cell -> named.put(cell[0], cell[1]));
        return row(Kinds.GENOTYPES, named);
    }

    public static <T extends Record> T row(Kind<T> kind, Map<String, String> cells) {
        try {
            return kind.read(column -> cells.getOrDefault(column, ""));
        } catch (CellRefused refused) {
            throw new IllegalStateException(refused);
        }
    }

    public static Code<Genotype> code(String text) {
        return Code.of(text);
    }
}
