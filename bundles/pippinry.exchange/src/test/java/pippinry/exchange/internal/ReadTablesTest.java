package pippinry.exchange.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ask.RowsRefused;

class ReadTablesTest {

    @TempDir
    private Path folder;

    @Test
    void everyRowOfAllFilesIsInOneEditOfThatHandAndReason() throws Exception {
        List<Path> files =
                List.of(file("plants.csv", "tag,genotype\nFIE-1,FIE\n"), file("genotypes.csv", "code\nFIE\n"));
        Edit edit = new ReadTables().read(Program.empty(), files, true, "IN", "Notebooks");
        assertEquals(2, edit.changes().size());
        assertEquals("IN", edit.author());
        assertEquals("Notebooks", edit.reason());
    }

    @Test
    void aRowThatCannotBeReadIsNamedWithFileAndLine() throws IOException {
        List<Path> files = List.of(file("plants.csv", "tag,made_on\nFIE-1,2025-02-30\n"));
        RowsRefused refused = assertThrows(
                RowsRefused.class, () -> new ReadTables().read(Program.empty(), files, true, "IN", "Notebooks"));
        assertTrue(refused.getMessage().contains("plants.csv line 2"), refused.getMessage());
        assertTrue(refused.getMessage().contains("2025-02-30"), refused.getMessage());
    }

    @Test
    void aFileThatIsNoTableIsRefused() throws IOException {
        List<Path> files = List.of(file("apples.csv", "code\nFIE\n"));
        assertThrows(RowsRefused.class, () -> new ReadTables().read(Program.empty(), files, true, "IN", "x"));
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
