package pippinry.lineage.internal;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Small programs for tests. */
public final class Programs {

    private static final Instant NOW = Instant.parse("2026-03-27T10:00:00Z");

    private Programs() {}

    /** @param rows {@code code,seed_parent,pollen_parent[,column=value ...]} */
    public static Program of(String... rows) {
        return of(Arrays.asList(rows));
    }

    public static Program of(List<String> rows) {
        Edit.Draft draft = Edit.by("IN", "for a test");
        for (String row : rows) {
            String[] cells = row.split(",", -1);
            Map<String, String> named =
                    new HashMap<>(Map.of("code", cells[0], "seed_parent", cells[1], "pollen_parent", cells[2]));
            Arrays.stream(cells).skip(3).map(cell -> cell.split("=")).forEach(cell -> named.put(cell[0], cell[1]));
            draft.put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, named));
        }
        return edited(Program.empty(), draft);
    }

    /** Rows of so many seedlings, none of whose numbers has a star for its check. */
    public static List<String> seedlings(String cross, String seed, String pollen, int count) {
        return IntStream.iterate(1, i -> i + 1)
                .mapToObj(i -> "%s-%03d".formatted(cross, i))
                .filter(number -> CheckCharacter.of(number) != CheckCharacter.STAR)
                .limit(count)
                .map(number -> number + "," + seed + "," + pollen + ",kind=seedling")
                .toList();
    }

    public static Program edited(Program program, Edit.Draft draft) {
        try {
            return program.apply(draft.done(), NOW).program();
        } catch (EditRefused refused) {
            throw new IllegalStateException(refused);
        }
    }

    public static <T extends Record> T row(Kind<T> kind, Map<String, String> cells) {
        try {
            return kind.read(column -> cells.getOrDefault(column, ""));
        } catch (CellRefused refused) {
            throw new IllegalStateException(refused);
        }
    }
}
