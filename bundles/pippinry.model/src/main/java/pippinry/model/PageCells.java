package pippinry.model;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import pippinry.model.page.Packed;
import pippinry.model.page.Page;
import pippinry.model.page.Words;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;

/** Makes records of the packed cells of pages; cells that were read lately are not parsed again. Safe for any thread. */
final class PageCells<T extends Record> {

    private static final int REMEMBERED = 1 << 10;

    /** Immutable, so that it may be seen by any thread without a lock; a lost one is only read again. */
    private record Known(long packed, String text, Object value) {}

    private final Kind<T> kind;
    private final List<Column> columns;
    private final boolean[] alwaysWord;
    private final int[] citing;
    private final Known[][] known;

    PageCells(Kind<T> kind) {
        this.kind = kind;
        this.columns = kind.columns();
        this.alwaysWord = new boolean[columns.size()];
        List<Integer> cited = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            // A code is a word even where it looks like a number, because rows are found by the codes that they cite.
            alwaysWord[i] = columns.get(i).cites().isPresent() || columns.get(i).namesSubject();
            if (alwaysWord[i]) {
                cited.add(i);
            }
        }
        this.citing = cited.stream().mapToInt(Integer::intValue).toArray();
        this.known = new Known[columns.size()][REMEMBERED];
    }

    Kind<T> kind() {
        return kind;
    }

    int columns() {
        return columns.size();
    }

    /** Places of the columns that name other records, each in one code. */
    int[] citing() {
        return citing;
    }

    /** Place of the key column; empty if the kind has none. */
    OptionalInt key() {
        return kind.key().isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(columns.indexOf(kind.key().get(0)));
    }

    /** The text as it would be packed in this column; empty if it needs a word that the table does not have. */
    OptionalLong known(Column column, String text, Words words) {
        long plain = plain(columns.indexOf(column), text);
        if (plain != Packed.NOT_PLAIN) {
            return OptionalLong.of(plain);
        }
        OptionalInt number = words.number(text);
        return number.isPresent() ? OptionalLong.of(Packed.word(number.getAsInt())) : OptionalLong.empty();
    }

    long plain(int column, String text) {
        return alwaysWord[column] && !text.isEmpty() ? Packed.NOT_PLAIN : Packed.plain(text);
    }

    T read(Page page, int place, Words words) {
        Object[] values = new Object[columns.size()];
        for (int column = 0; column < values.length; column++) {
            values[column] = value(column, page.cell(column, place), words);
        }
        try {
            return kind.make(values);
        } catch (CellRefused e) {
            throw new IllegalStateException("A row on file does not read: " + e.getMessage(), e);
        }
    }

    /** The number of a word may stand for another text in another table, so the text is compared. */
    private Object value(int column, long packed, Words words) {
        int slot = (int) (packed ^ packed >>> 10 ^ packed >>> 20) & REMEMBERED - 1;
        Known there = known[column][slot];
        String word = Packed.isWord(packed) ? words.text(Packed.wordNumber(packed)) : null;
        boolean hit = there != null && there.packed == packed && (word == null || word.equals(there.text));
        if (hit) {
            return there.value;
        }
        String text = word == null ? Packed.text(packed, words) : word;
        Object value = kind.parse(columns.get(column), text);
        known[column][slot] = new Known(packed, text, value);
        return value;
    }
}
