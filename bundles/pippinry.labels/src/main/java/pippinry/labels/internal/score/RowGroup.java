package pippinry.labels.internal.score;

import java.util.List;

/** Lines that are walked past together under one heading: a row of the block, a cross. */
public record RowGroup(String heading, List<ScoreRow> rows) {
    public RowGroup {
        rows = List.copyOf(rows);
    }
}
