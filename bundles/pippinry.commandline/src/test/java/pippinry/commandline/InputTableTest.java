package pippinry.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InputTableTest {

    @TempDir
    Path folder;

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("t.csv"), text);
    }

    private String complaint(String text, String... needed) throws IOException {
        Path file = file(text);
        CallRefused refused = assertThrows(CallRefused.class, () -> readAll(file, needed));
        return refused.getMessage().replace(folder + "/", "");
    }

    private static void readAll(Path file, String... needed) throws CallRefused {
        try (InputTable table = InputTable.open(file, needed)) {
            while (table.hasNext()) {
                InputRow row = table.next();
                row.needed("code");
                row.number("n");
            }
        }
    }

    @Test
    void columnsComeInAnyOrderAndStrangersAreIgnored() throws Exception {
        Path file = file("\ufeffn,odd,code\r\n\r\n 2.5 ,x,\" A, B\"\r\n,,C\r\n");
        try (InputTable table = InputTable.open(file, "code", "n")) {
            InputRow first = table.next();
            assertEquals("A, B", first.text("code"));
            assertEquals(Optional.of(2.5), first.number("n"));
            assertEquals(3, first.line());
            assertEquals("", first.text("never"));
            InputRow second = table.next();
            assertEquals(Optional.empty(), second.number("n"));
            assertEquals(4, second.line());
            assertFalse(table.hasNext());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "code,n\\nA,1\\nB,x; t.csv line 3, column n: 'x'; a number",
                "code,n\\nA,NaN; t.csv line 2, column n: 'NaN'; a number",
                "code,n\\nA,1d; t.csv line 2, column n: '1d'; a number",
                "code,n\\n,1; t.csv line 2, column code: ''; must not be empty",
                "kode,n\\nA,1; t.csv line 1, column code: missing; 'kode,n'",
                "code,n,code\\nA,1,B; t.csv line 1, column code: the header names it; expected once",
                "code,n\\nA,1,2; t.csv line 2: 3 fields; expected 2",
                "code,n\\nA; t.csv line 2: 1 fields; expected 2",
                "code,n\\nA,1\\n\"B,2\\nC,3; t.csv after line 2: a quoted field; not closed",
                "\\n; t.csv line 1: the file is empty; expected a header",
            })
    void aComplaintNamesFileLineColumnAndWhatWasExpected(String text, String where, String expected) throws Exception {
        String complaint = complaint(text.replace("\\n", "\n"), "code");
        assertTrue(complaint.contains(where.strip()), complaint);
        assertTrue(expected == null || complaint.contains(expected.strip()), complaint);
    }

    @Test
    void aTableInAnotherEncodingIsRefusedAtItsLine() throws Exception {
        Path file = folder.resolve("latin.csv");
        Files.write(file, "code,n\nA,1\nGr\u00e4fin,2\n".getBytes(StandardCharsets.ISO_8859_1));
        CallRefused refused = assertThrows(CallRefused.class, () -> readAll(file, "code"));
        assertTrue(refused.getMessage().contains("latin.csv line 3, after 'Gr': byte 0xE4"), refused.getMessage());
    }

    @Test
    void aMissingFileAndAFolderAreSaidSo() {
        CallRefused missing = assertThrows(CallRefused.class, () -> readAll(folder.resolve("none.csv"), "code"));
        assertTrue(missing.getMessage().contains("no such file"));
        CallRefused directory = assertThrows(CallRefused.class, () -> readAll(folder, "code"));
        assertTrue(directory.getMessage().contains("it is a folder"), directory.getMessage());
    }
}
