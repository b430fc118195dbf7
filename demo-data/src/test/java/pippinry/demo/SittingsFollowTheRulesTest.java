package pippinry.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Every sitting is put through the records and rules of the program itself. */
class SittingsFollowTheRulesTest {

    @Test
    void everySittingIsAcceptedInItsOrder() throws Exception {
        Program program = Program.empty();
        for (Path sitting : Files.sittings()) {
            LocalDate day = LocalDate.parse(sitting.getFileName().toString().substring(4, 14));
            program = program.apply(edit(sitting), day.atTime(20, 0).toInstant(ZoneOffset.UTC))
                    .program();
        }
        assertEquals(List.of(), program.faults());
    }

    private static Edit edit(Path sitting) throws IOException, CellRefused {
        String[] reason = java.nio.file.Files.readString(sitting.resolve("reason.txt"))
                .strip()
                .split(": ", 2);
        assertTrue(List.of("IN", "OD").contains(reason[0]), sitting.toString());
        Edit.Draft draft = Edit.by(reason[0], reason[1]);
        for (Path file : Files.tables(sitting)) {
            put(draft, Kinds.named(Files.table(file)).orElseThrow(), file);
        }
        return draft.done();
    }

    private static <T extends Record> void put(Edit.Draft draft, Kind<T> kind, Path file) throws CellRefused {
        List<String> columns =
                kind.columns().stream().map(column -> column.name()).toList();
        for (var row : Files.read(file)) {
            assertTrue(columns.containsAll(row.getHeader()), () -> file + " has columns beyond " + columns);
            draft.put(kind, kind.read(name -> row.findField(name).orElse("")));
        }
    }

    @Test
    void datesOfSittingsNeverRunBackwards() throws EditRefused {
        List<String> days = Files.sittings().stream()
                .map(sitting -> sitting.getFileName().toString().substring(4, 14))
                .toList();
        assertEquals(days.stream().sorted().toList(), days);
        assertTrue(days.get(days.size() - 1).compareTo(Larkmoor.TODAY.toString()) <= 0);
    }
}
