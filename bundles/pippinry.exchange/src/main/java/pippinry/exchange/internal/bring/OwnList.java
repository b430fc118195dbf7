package pippinry.exchange.internal.bring;

import java.nio.file.Path;
import java.util.List;

/**
 * A list as it stands in its file.
 *
 * @param header names of the columns, empty where there is none
 * @param rows those below the header that are not empty
 */
public record OwnList(Path file, List<String> header, List<ListRow> rows) {

    /**
     * One row.
     *
     * @param line on which it stands in the file, the first line is 1
     * @param cells as many as the header has; numbers with a point, a spreadsheet's days as 2016-05-14
     */
    public record ListRow(long line, List<String> cells) {

        boolean isEmpty() {
            return cells.stream().allMatch(String::isBlank);
        }
    }
}
