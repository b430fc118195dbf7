package pippinry.crossing.internal;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.Instant;
import java.util.List;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** A program for tests, written as its plain tables. */
public final class TestProgram {

    private final Edit.Draft draft = Edit.by("IN", "test");

    /** A code made from the wish that may stand on a tag. */
    public static String code(String wish) {
        return CheckCharacter.of(wish) == CheckCharacter.STAR ? wish + "X" : wish;
    }

    /** Adds rows of a table; the first line is the header. */
    public TestProgram table(String name, String... lines) {
        return csv(name, String.join("\n", List.of(lines)));
    }

    /** Adds a whole table as CSV text. */
    public TestProgram csv(String name, String text) {
        Kind<?> kind = Kinds.named(name).orElseThrow();
        CsvReader.builder().ofNamedCsvRecord(text).forEach(row -> put(kind, row));
        return this;
    }

    public Program build() {
        try {
            return Program.empty().apply(draft.done(), Instant.EPOCH).program();
        } catch (EditRefused e) {
            throw new AssertionError(e);
        }
    }

    private <T extends Record> void put(Kind<T> kind, NamedCsvRecord row) {
        try {
            draft.put(kind, kind.read(column -> row.findField(column).orElse("")));
        } catch (CellRefused e) {
            throw new AssertionError(row + ": " + e.getMessage(), e);
        }
    }
}
