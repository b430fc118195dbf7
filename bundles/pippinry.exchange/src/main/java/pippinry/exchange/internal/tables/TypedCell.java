package pippinry.exchange.internal.tables;

import java.util.List;
import pippinry.model.number.Reading;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.OwnTrait;
import pippinry.model.record.Setting;

/**
 * Reads a cell as a person meant it: blanks around a code, number, date or word go, and so does a right check character
 * after a number. A person's own words stay as they are.
 */
final class TypedCell {

    /** Finds numbers on file close to one that is not. */
    interface Nearest {
        List<String> near(Reading typed);
    }

    private final Column column;
    private final boolean exact;
    private final boolean numbered;
    private final Nearest nearest;

    TypedCell(Kind<?> kind, Column column, Nearest nearest) {
        this.column = column;
        this.exact = column.isText() && !column.needed() && !kind.key().contains(column);
        this.numbered = column.cites().isPresent() || column.namesSubject() || isOwnNumber(kind, column);
        this.nearest = nearest;
    }

    private static boolean isOwnNumber(Kind<?> kind, Column column) {
        boolean code = kind.key().size() == 1 && kind.key().contains(column) && !column.isText();
        return code && kind.type() != Setting.class && kind.type() != OwnTrait.class && kind != Kinds.WEATHER;
    }

    String read(String raw) throws CellRefused {
        if (exact) {
            return raw;
        }
        String text = raw.strip();
        return numbered && text.indexOf('=') >= 0 ? withoutChecks(text) : text;
    }

    /** Candidates for a parent are several numbers, each perhaps with its check. */
    private String withoutChecks(String text) throws CellRefused {
        StringBuilder numbers = new StringBuilder();
        for (String each : text.split("\\|", -1)) {
            numbers.append(numbers.isEmpty() ? "" : "|").append(withoutCheck(each.strip()));
        }
        return numbers.toString();
    }

    private String withoutCheck(String typed) throws CellRefused {
        int sign = typed.lastIndexOf('=');
        if (sign < 0) {
            return typed;
        }
        String number = typed.substring(0, sign).strip();
        Reading reading = reading(typed);
        if (!reading.isValid()) {
            List<String> near = nearest.near(reading);
            String meant = near.isEmpty() ? "" : "; near it on file: " + String.join(", ", near);
            throw new CellRefused(
                    column.name(),
                    typed,
                    "the check " + reading.check() + " after " + number + ": one sign is wrong" + meant);
        }
        return number;
    }

    private Reading reading(String typed) throws CellRefused {
        try {
            return Reading.of(typed);
        } catch (IllegalArgumentException e) {
            throw new CellRefused(column.name(), typed, e.getMessage());
        }
    }
}
