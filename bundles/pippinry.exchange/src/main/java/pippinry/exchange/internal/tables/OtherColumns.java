package pippinry.exchange.internal.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.Subjects;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Note;
import pippinry.model.value.Subject;

/** Keeps what stands in columns that a table does not have: as notes about the row, or in its own note. */
final class OtherColumns<T extends Record> {

    private static final String NOTE = "note";

    private enum Place {
        NOTE_OF_ROW,
        OWN_NOTE,
        NOTE_OF_FIRST,
        NOWHERE
    }

    private final Kind<T> kind;
    private final Map<String, Integer> others;
    private final Place place;
    private final Map<String, Integer> values = new LinkedHashMap<>();

    OtherColumns(Kind<T> kind, Heading heading) {
        this.kind = kind;
        this.others = heading.others();
        this.place = placeFor(kind);
        others.keySet().forEach(name -> values.put(name, 0));
    }

    private static Place placeFor(Kind<?> kind) {
        if (Subjects.mayBe(kind)) {
            return Place.NOTE_OF_ROW;
        }
        if (kind.column(NOTE).isPresent()) {
            return Place.OWN_NOTE;
        }
        Column first = kind.columns().get(0);
        return first.cites().isPresent() || first.namesSubject() ? Place.NOTE_OF_FIRST : Place.NOWHERE;
    }

    /** Adds them to the note among the texts of the row, if that is their place. */
    void intoNote(List<String> cells, Map<String, String> texts) {
        List<String> said = place == Place.OWN_NOTE ? said(cells) : List.of();
        if (!said.isEmpty()) {
            String own = texts.getOrDefault(NOTE, "");
            texts.put(NOTE, (own.isEmpty() ? "" : own + "; ") + String.join("; ", said));
        }
    }

    /** The notes that stand for them. */
    List<Note> notes(List<String> cells, T row) {
        if (place == Place.OWN_NOTE || place == Place.NOWHERE || others.isEmpty()) {
            said(cells).forEach(this::count);
            return List.of();
        }
        List<String> said = said(cells);
        said.forEach(this::count);
        Subject subject = new Subject(
                place == Place.NOTE_OF_ROW
                        ? kind.keyOf(row).orElseThrow()
                        : kind.cell(row, kind.columns().get(0)));
        String where = place == Place.NOTE_OF_ROW ? "" : " (" + kind.table() + dateOf(row) + ")";
        return said.stream()
                .map(text -> new Note(subject, Optional.empty(), text + where))
                .toList();
    }

    private String dateOf(T row) {
        return kind.column("date")
                .or(() -> kind.column("from"))
                .map(column -> kind.cell(row, column))
                .filter(date -> !date.isEmpty())
                .map(date -> " " + date)
                .orElse("");
    }

    private List<String> said(List<String> cells) {
        List<String> said = new ArrayList<>();
        others.forEach((name, index) -> {
            if (!cells.get(index).isBlank()) {
                said.add(name + ": " + cells.get(index));
            }
        });
        return said;
    }

    private void count(String said) {
        values.merge(said.substring(0, said.indexOf(": ")), 1, Integer::sum);
    }

    /** One line for each of them. */
    List<String> warnings() {
        String fate = place == Place.NOWHERE
                ? "left out, for there is no record here to note them with"
                : place == Place.OWN_NOTE ? "kept in the column note" : "kept as notes";
        return values.entrySet().stream()
                .map(column -> "'" + column.getKey() + "' is no column of " + kind.table() + "; "
                        + (column.getValue() == 1 ? "its one value is " : "its " + column.getValue() + " values are ")
                        + fate)
                .toList();
    }
}
