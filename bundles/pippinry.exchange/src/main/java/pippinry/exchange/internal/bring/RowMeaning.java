package pippinry.exchange.internal.bring;

import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.value.PartialDate;

/** Makes a record of the texts of one row, trying what a person may have meant where a cell does not fit as it stands. */
final class RowMeaning {

    private final Program program;
    private final Known known;
    private final OwnDate dates;

    RowMeaning(Program program, Known known, OwnDate dates) {
        this.program = program;
        this.known = known;
        this.dates = dates;
    }

    /**
     * The record; one on file under its key is completed where nothing is known, and never contradicted.
     *
     * @param texts by column, without blanks around them
     */
    <T extends Record> T read(Kind<T> kind, Map<String, String> texts) throws Unclear {
        Map<String, String> meant = new HashMap<>(texts);
        for (Column column : kind.columns()) {
            String text = meant.getOrDefault(column.name(), "");
            if (column.cites().isPresent() && !text.isEmpty()) {
                meant.put(column.name(), codes(Kinds.of(column.cites().get()), text));
            }
        }
        T row = fitted(kind, meant);
        Optional<T> onFile = kind.keyOf(row).flatMap(program.table(kind)::find).map(Row::value);
        return onFile.isPresent() ? completed(kind, onFile.get(), row) : row;
    }

    /** Candidates for a parent are parted by a bar, as in the plain tables. */
    private String codes(Kind<?> kind, String text) throws Unclear {
        if (kind == Kinds.GENOTYPES) {
            String word = text.toLowerCase(Locale.ROOT).replace(".", "").strip();
            if (List.of("op", "open", "open pollinated", "open pollination").contains(word)) {
                return "op";
            }
            if (List.of("self", "selfed").contains(word)) {
                return "self";
            }
            if (List.of("unknown", "?", "-").contains(word)) {
                return "";
            }
        }
        StringBuilder codes = new StringBuilder();
        for (String one : text.split("\\|", -1)) {
            codes.append(codes.isEmpty() ? "" : "|").append(known.code(kind, one.strip()));
        }
        return codes.toString();
    }

    private <T extends Record> T fitted(Kind<T> kind, Map<String, String> texts) throws Unclear {
        Map<String, Iterator<String>> tries = new HashMap<>();
        while (true) {
            try {
                return kind.read(column -> texts.getOrDefault(column, ""));
            } catch (CellRefused e) {
                if (!tries.containsKey(e.column())) {
                    tries.put(e.column(), otherwise(e));
                }
                if (!tries.get(e.column()).hasNext()) {
                    throw new Unclear(e.column() + " '" + e.value() + "'; expected " + e.expected());
                }
                texts.put(e.column(), tries.get(e.column()).next());
            }
        }
    }

    /** What the cell may have meant besides what it says. */
    private Iterator<String> otherwise(CellRefused cell) throws Unclear {
        String text = cell.value();
        if (cell.expected().equals(PartialDate.EXPECTED)) {
            return dates.read(text).stream().iterator();
        }
        if (cell.expected().startsWith("one of: ")) {
            return words(cell).iterator();
        }
        return Stream.of(text.replace(',', '.'), text.replaceFirst("[.,]0+$", ""))
                .filter(other -> !other.equals(text))
                .iterator();
    }

    private static Stream<String> words(CellRefused cell) {
        List<String> words =
                List.of(cell.expected().substring("one of: ".length()).split(", "));
        String meant = letters(cell.value());
        if (words.contains("yes")
                && List.of("y", "true", "x", "1", "n", "false", "0").contains(meant)) {
            return Stream.of(List.of("y", "true", "x", "1").contains(meant) ? "yes" : "no");
        }
        return words.stream().filter(word -> letters(word).equals(meant));
    }

    private static String letters(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private <T extends Record> T completed(Kind<T> kind, T onFile, T row) throws Unclear {
        for (Column column : kind.columns()) {
            String old = kind.cell(onFile, column);
            String now = kind.cell(row, column);
            if (!old.isEmpty() && !now.isEmpty() && !old.equals(now)) {
                throw new Unclear(kind.keyOf(row).orElse("") + " is on file with " + column + " '" + old
                        + "', here it is '" + now + "'");
            }
        }
        try {
            return kind.read(name -> {
                Column column = kind.column(name).orElseThrow();
                String now = kind.cell(row, column);
                return now.isEmpty() ? kind.cell(onFile, column) : now;
            });
        } catch (CellRefused e) {
            throw new Unclear(e.column() + " '" + e.value() + "'; expected " + e.expected());
        }
    }
}
