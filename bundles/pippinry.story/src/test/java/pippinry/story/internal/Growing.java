package pippinry.story.internal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.Settled;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;

/** A program as a test writes it, row by row with the columns of its plain tables. */
public final class Growing {

    private static final Instant NOW = Instant.parse("2026-03-27T10:00:00Z");

    private final List<Settled<?>> rows = new ArrayList<>();
    private final Edit.Draft draft = Edit.by("IN", "test");
    private final Map<Kind<?>, Integer> ids = new HashMap<>();

    public <T extends Record> Growing with(Kind<T> kind, String... cells) {
        Map<String, String> given = new HashMap<>();
        for (int i = 0; i < cells.length; i += 2) {
            given.put(cells[i], cells[i + 1]);
        }
        try {
            T row = kind.read(column -> given.getOrDefault(column, ""));
            draft.put(kind, row);
            int id = ids.merge(kind, 1, Integer::sum) - 1;
            rows.add(new Settled<>(kind, id, Optional.empty(), Optional.of(row)));
            return this;
        } catch (CellRefused e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** The program, if the rules of the model let it be. */
    public Program program() {
        try {
            return Program.empty().apply(draft.done(), NOW).program();
        } catch (EditRefused e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** The program even if it does not hold together, as after damage on the disk. */
    public Program broken() {
        return Program.empty().with(rows, 1, NOW);
    }

    public List<Settled<?>> changes() {
        return rows;
    }
}
