package pippinry.traits;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import pippinry.model.value.Word;

/** One row of a pack's table; every reading fault names file, line, column, value and what was expected. */
final class TableRow {

    private final String file;
    private final NamedCsvRecord record;

    TableRow(String file, NamedCsvRecord record) {
        this.file = file;
        this.record = record;
    }

    /** A cell that may be empty; a missing column is empty. */
    String text(String column) {
        return record.findField(column).orElse("").strip();
    }

    String needed(String column) {
        String value = text(column);
        if (value.isEmpty()) {
            throw fault(column, value, "something");
        }
        return value;
    }

    Optional<String> optional(String column) {
        return Optional.of(text(column)).filter(value -> !value.isEmpty());
    }

    /** Parts between bars. */
    List<String> list(String column) {
        return Arrays.stream(text(column).split("\\|"))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    OptionalDouble number(String column) {
        String value = text(column);
        return value.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(read(column, Double::parseDouble, "a number"));
    }

    double neededNumber(String column) {
        needed(column);
        return number(column).getAsDouble();
    }

    OptionalInt whole(String column) {
        String value = text(column);
        return value.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(read(column, Integer::parseInt, "a whole number"));
    }

    int neededWhole(String column) {
        needed(column);
        return whole(column).getAsInt();
    }

    boolean yes(String column) {
        return switch (text(column)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw fault(column, text(column), "yes or no");
        };
    }

    <E extends Enum<E> & Word> E word(Class<E> type, String column) {
        return Word.find(type, text(column))
                .orElseThrow(() -> fault(column, text(column), "one of " + Word.list(type)));
    }

    <E extends Enum<E> & Word> Optional<E> optionalWord(Class<E> type, String column) {
        return text(column).isEmpty() ? Optional.empty() : Optional.of(word(type, column));
    }

    Provenance provenance() {
        return new Provenance(word(Basis.class, "basis"), text("source"));
    }

    /** Makes the row's record; what its own checks refuse is told with the line. */
    <T> T make(Function<TableRow, T> maker) {
        try {
            return maker.apply(this);
        } catch (IllegalArgumentException e) {
            throw new PackRefused(where() + ": expected " + e.getMessage(), e);
        }
    }

    PackRefused fault(String column, String value, String expected) {
        return new PackRefused(
                where() + ", column " + column + ": '" + value + "' where " + expected + " was expected");
    }

    private <T> T read(String column, Function<String, T> reader, String expected) {
        try {
            return reader.apply(text(column));
        } catch (NumberFormatException e) {
            throw fault(column, text(column), expected);
        }
    }

    private String where() {
        return file + ", line " + record.getStartingLineNumber();
    }
}
