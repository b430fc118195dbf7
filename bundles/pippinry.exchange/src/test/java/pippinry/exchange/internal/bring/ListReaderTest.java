package pippinry.exchange.internal.bring;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pippinry.exchange.internal.tables.FileRefused;

class ListReaderTest {

    private static final String ROWS = "<row r=\"2\"><c r=\"A2\" t=\"s\"><v>0</v></c><c r=\"B2\" t=\"s\"><v>1</v></c>"
            + "<c r=\"C2\" t=\"s\"><v>2</v></c><c r=\"D2\" t=\"inlineStr\"><is><t>Brix</t></is></c></row>"
            + "<row r=\"4\"><c r=\"A4\"><v>17</v></c><c r=\"B4\" t=\"s\"><v>3</v></c><c r=\"C4\" s=\"1\"><v>42504</v></c>"
            + "<c r=\"D4\"><f>6.15*2</f><v>12.300000000000001</v></c></row>"
            + "<row r=\"5\"><c r=\"A5\" t=\"b\"><v>1</v></c><c r=\"C5\" s=\"2\"><v>42504.395833333336</v></c>"
            + "<c r=\"D5\" t=\"e\"><v>#DIV/0!</v></c></row>";

    @TempDir
    private Path files;

    private OwnList read(byte[] bytes) throws Exception {
        return new ListReader(Files.write(files.resolve("list.csv"), bytes)).read(Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void commasSemicolonsAndTabsPartCells(String sign) throws Exception {
        OwnList list =
                read(("\n\nNumber" + sign + "Mother\r\n1" + sign + "Fiesta\r\n\r\n2" + sign + "\"a" + sign + "b\"\r\n")
                        .getBytes(UTF_8));
        assertEquals(List.of("Number", "Mother"), list.header());
        assertEquals(
                List.of(
                        new OwnList.ListRow(4, List.of("1", "Fiesta")),
                        new OwnList.ListRow(6, List.of("2", "a" + sign + "b"))),
                list.rows());
    }

    @Test
    void encodingsOfOldMachinesAreRead() throws Exception {
        for (Charset charset : List.of(UTF_8, UTF_16, Charset.forName("windows-1252"))) {
            OwnList list = read("Name\nÅkerö – früh\n".getBytes(charset));
            assertEquals("Åkerö – früh", list.rows().get(0).cells().get(0), charset.name());
        }
        assertEquals("Name", read("\ufeffName\nx\n".getBytes(UTF_8)).header().get(0));
    }

    @Test
    void rowsOfDifferentWidthAreFilledUp() throws Exception {
        OwnList list = read("a,b\n1\n1,2,3\n".getBytes(UTF_8));
        assertEquals(List.of("a", "b", ""), list.header());
        assertEquals(List.of("1", "", ""), list.rows().get(0).cells());
    }

    @Test
    void aWorkbookIsReadWithItsDaysFormulasAndRowNumbers() throws Exception {
        Path book = Workbook.write(files.resolve("list.xlsx"), "", ROWS, "<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>");
        OwnList list = new ListReader(book).read(Optional.empty());
        assertEquals(List.of("Number", "Mother", "Planted", "Brix"), list.header());
        assertEquals(
                new OwnList.ListRow(4, List.of("17", "Fiesta", "2016-05-14", "12.3")),
                list.rows().get(0));
        assertEquals("2016-05-14T09:30", list.rows().get(1).cells().get(2));
        assertEquals("", list.rows().get(1).cells().get(3), "an error is nothing known");
    }

    @Test
    void theOtherWayOfCountingDaysIsKnown() throws Exception {
        Path book = Workbook.write(files.resolve("list.xlsx"), "<workbookPr date1904=\"1\"/>", ROWS, "");
        assertEquals(
                "2020-05-15",
                new ListReader(book)
                        .read(Optional.empty())
                        .rows()
                        .get(0)
                        .cells()
                        .get(2));
    }

    @Test
    void aSheetIsChosenByItsName() throws Exception {
        Path book = Workbook.write(files.resolve("list.xlsx"), "", ROWS, "<row r=\"1\"><c r=\"A1\"><v>5</v></c></row>");
        assertEquals(List.of("5"), new ListReader(book).read(Optional.of("Old")).header());
        FileRefused refused = assertThrows(FileRefused.class, () -> new ListReader(book).read(Optional.of("New")));
        assertEquals(book + ": it has no sheet 'New'; its sheets are: Seedlings, Old", refused.getMessage());
    }

    @Test
    void whatIsNoListIsRefused() throws Exception {
        assertTrue(assertThrows(FileRefused.class, () -> read(new byte[0]))
                .getMessage()
                .contains("there is nothing in it"));
        assertTrue(assertThrows(FileRefused.class, () -> read(new byte[] {'P', 'K', 3, 4, 0, 0, 0}))
                .getMessage()
                .contains("this workbook cannot be read"));
        assertTrue(assertThrows(FileRefused.class, () -> read("a,\"b\n1".getBytes(UTF_8)))
                .getMessage()
                .contains("it cannot be read as a table"));
    }
}
