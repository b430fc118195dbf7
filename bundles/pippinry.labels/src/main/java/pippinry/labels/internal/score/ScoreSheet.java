package pippinry.labels.internal.score;

import java.util.List;
import pippinry.labels.internal.tag.Tag;

/**
 * A sheet to be filled in by pencil.
 *
 * @param number the sheet's own number and check
 * @param title what is done with it, such as {@code Score sheet}
 * @param about where, for which program, printed when
 */
public record ScoreSheet(Tag number, String title, String about, List<ScoreColumn> columns, List<RowGroup> groups) {
    /** So many columns fit on the long side of a page. */
    public static final int MOST_COLUMNS = 14;

    public ScoreSheet {
        columns = List.copyOf(columns);
        groups = List.copyOf(groups);
        if (columns.isEmpty() || columns.size() > MOST_COLUMNS) {
            throw new IllegalArgumentException(
                    "A sheet has 1 to " + MOST_COLUMNS + " columns, not " + columns.size() + "; print two sheets");
        }
        if (groups.stream().allMatch(group -> group.rows().isEmpty())) {
            throw new IllegalArgumentException("A sheet has at least one line");
        }
    }

    /** Every line in walking order. */
    public List<ScoreRow> rows() {
        return groups.stream().flatMap(group -> group.rows().stream()).toList();
    }
}
