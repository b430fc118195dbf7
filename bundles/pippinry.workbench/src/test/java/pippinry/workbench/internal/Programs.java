package pippinry.workbench.internal;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Outcome;
import pippinry.model.Program;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;

/** Small programs for tests. */
final class Programs {

    private static final Instant NOW = Instant.parse("2026-03-27T10:00:00Z");

    private Programs() {}

    static Outcome edited(Program program, Edit.Draft draft) {
        try {
            return program.apply(draft.done(), NOW);
        } catch (EditRefused refused) {
            throw new IllegalStateException(refused);
        }
    }

    /** @param cells names and values by turns */
    static <T extends Record> T row(Kind<T> kind, String... cells) {
        Map<String, String> named = new HashMap<>();
        for (int i = 0; i < cells.length; i += 2) {
            named.put(cells[i], cells[i + 1]);
        }
        try {
            return kind.read(column -> named.getOrDefault(column, ""));
        } catch (CellRefused refused) {
            throw new IllegalStateException(refused);
        }
    }
}
