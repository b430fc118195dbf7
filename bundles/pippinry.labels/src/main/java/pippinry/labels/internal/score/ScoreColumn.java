package pippinry.labels.internal.score;

import java.util.List;

/**
 * A column of boxes to write in.
 *
 * @param code the trait or count as it is filed, such as {@code scab_leaf}
 * @param title what it is called
 * @param hint what may be written, in a few signs: {@code 1-9}, {@code mm}
 * @param legend how it is scored and what each note means, a line each; may be empty
 */
public record ScoreColumn(String code, String title, String hint, List<String> legend) {
    public ScoreColumn {
        legend = List.copyOf(legend);
    }
}
