package pippinry.exchange.internal;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pippinry.commandline.CallRefused;
import pippinry.model.Program;
import pippinry.model.record.Kinds;

/** Files as they come from spreadsheets, old machines and accidents; each gets its rows in, or one clear answer. */
class NastyFilesTest {

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    @TempDir
    private Path files;

    private Path larkmoor;
    private final MemoryStore.Folders folders = new MemoryStore.Folders();
    private final CallInTest call = new CallInTest(folders);

    @BeforeEach
    void newProgram() {
        larkmoor = files.resolve("larkmoor");
        folders.create(larkmoor, call.clock());
    }

    private record Good(String what, byte[] bytes, List<String> codes) {
        @Override
        public String toString() {
            return what;
        }
    }

    private record Bad(String what, byte[] bytes, String message) {
        @Override
        public String toString() {
            return what;
        }
    }

    static Stream<Good> filesThatComeIn() {
        return Stream.of(
                good("line feeds", "code\nA\nB\n", "A", "B"),
                good("carriage return and line feed", "code\r\nA\r\nB\r\n", "A", "B"),
                good("carriage returns alone", "code\rA\rB\r", "A", "B"),
                good("all three", "code\r\nA\nB\rC", "A", "B", "C"),
                good("no end of the last line", "code\nA\nB", "A", "B"),
                good("a byte order mark", "\ufeffcode\nA\n", "A"),
                good("a byte order mark before a quoted header", "\ufeff\"code\"\nA\n", "A"),
                good("everything quoted", "\"code\",\"name\"\n\"A\",\"x\"\n", "A"),
                good("header only", "code,name\n"),
                good("header only, without a line's end", "code,name"),
                good("a header in capitals with blanks", " Code , NAME\nA,x\n", "A"),
                good("columns in another order", "name,code\nx,A\n", "A"),
                good("blanks after a code", "code\nA  \n B\n", "A", "B"),
                good("empty lines between and after", "code,name\nA,\n\n\nB,\n\n", "A", "B"),
                good("rows of commas only, as a spreadsheet leaves them", "code,name\nA,x\n,\n,\n", "A"),
                good("a header with commas after it, and rows too", "code,name,,\nA,x,,\n", "A"),
                good("more commas than the header has", "code,name\nA,x,,,\n", "A"),
                good("a quoted line's end", "code,note\nA,\"one\ntwo\"\nB,\n", "A", "B"),
                good("a quotation mark in a cell that is not quoted", "code,note\nA,5\" pot\n", "A"),
                good("a cell of 200,000 letters", "code,note\nA," + "x".repeat(200_000) + "\n", "A"),
                good("10,000 columns of their own", "code," + others() + "\nA" + ",".repeat(10_000) + "\n", "A"),
                good("letters beyond the first plane", "code,name\nA,\uD83C\uDF4E\n", "A"),
                good("a number with its right check", "code\n26-014-073=Y\n", "26-014-073"),
                good("small letters in a check", "code\n26-014-073=y\n", "26-014-073"),
                good("partial dates", "code,year\nA,2016\nB,2016-05\nC,about 2014\nD,2016-05-14\n", "A", "B", "C", "D"),
                good("a leap day", "code,year\nA,2016-02-29\n", "A"));
    }

    private static String others() {
        return IntStream.range(0, 10_000).mapToObj(i -> "c" + i).collect(Collectors.joining(","));
    }

    static Stream<Bad> filesThatAreRefused() {
        return Stream.of(
                bad("nothing at all", "", ": it is empty; a header row was expected"),
                bad("only a byte order mark", "\ufeff", ": it is empty; a header row was expected"),
                bad("only line ends", "\n\r\n\n", ": it is empty; a header row was expected"),
                bad(
                        "a key column is missing",
                        "name\nx\n",
                        " line 1, column code: 'name'; the header lacks this column"),
                bad(
                        "semicolons",
                        "code;name\nA;x\n",
                        " line 1, column code: 'code;name'; the header lacks this column;"
                                + " columns are parted by commas"),
                bad("tabs", "code\tname\nA\tx\n", "columns are parted by commas"),
                bad("no header", "A,Fiesta\nB,Elstar\n", " line 1, column code: 'A,Fiesta'; the header lacks this"),
                bad(
                        "two columns of a name",
                        "code,name,Name\nA,x,y\n",
                        " line 1, column Name: 'Name'; two columns have"),
                bad(
                        "a quotation mark never closed",
                        "code,note\nA,ok\nB,\"never\nC,x\n",
                        " line 3: the row that starts here cannot be read: a quotation mark is opened and never closed"),
                bad(
                        "letters after a closing quotation mark",
                        "code,note\nA,\"x\"y\n",
                        " line 2: the row that starts here cannot be read: something follows the closing quotation mark"),
                bad(
                        "a cell of two million letters",
                        "code,note\nA," + "x".repeat(2_000_000) + "\n",
                        " line 2: the row that starts here cannot be read: it has more than 20000 columns, or a cell"),
                bad(
                        "30,000 columns",
                        "code" + ",".repeat(30_000) + "\n",
                        " line 1: the row that starts here cannot be read"),
                bad(
                        "a row too short",
                        "code,name,year\nA,x\n",
                        " line 2: 'A,x'; expected 3 cells as in the header, here are 2"),
                bad(
                        "a row too long",
                        "code,name\nA,x,y\n",
                        " line 2: 'y'; expected 2 cells as in the header, this is number 3"),
                bad(
                        "a cell under no name",
                        "code,\nA,x\n",
                        " line 2: 'x'; expected nothing under a header without a name"),
                bad("a zero byte", "code\nA\nB\0\n", " line 3: there is a zero byte at byte 9"),
                bad(
                        "UTF-16 with a mark",
                        "code\nA\n".getBytes(UTF_16),
                        " line 1: byte 1 is FE, which is not UTF-8 (it looks"
                                + " like UTF-16); save the file as CSV UTF-8"),
                bad("UTF-16 without a mark", "code\nA\n".getBytes(UTF_16LE), " line 1: there is a zero byte at byte 2"),
                bad(
                        "Latin-1",
                        "code,name\nA,Åkerö\n".getBytes(ISO_8859_1),
                        " line 2: byte 13 is C5, which is not UTF-8 (it" + " looks like Windows-1252 or Latin-1)"),
                bad(
                        "Windows quotation marks",
                        "code,name\nA,\u201cx\u201d\n".getBytes(WINDOWS),
                        " line 2: byte 13 is 93,"),
                bad("a Windows dash after 10,000 rows", late().getBytes(WINDOWS), " line 10002: byte "),
                bad("an overlong form", bytes("code\nA", 0xC0, 0xAF), " line 2: byte 7 is C0"),
                bad("half a surrogate pair", bytes("code\nA", 0xED, 0xA0, 0x80), " line 2: byte 7 is ED"),
                bad("beyond the last letter", bytes("code\nA", 0xF4, 0x90, 0x80, 0x80), " line 2: byte 7 is F4"),
                bad("cut off in a letter", bytes("code,name\nA,x", 0xC3), ": the file ends in the middle of a letter"),
                bad(
                        "the word instead of a number",
                        "code,ploidy\nA,two\n",
                        " line 2, column ploidy: 'two'; expected a whole number"),
                bad("a number too big", "code,ploidy\nA,99999999999\n", "expected a whole number"),
                bad("a number out of range", "code,ploidy\nA,40\n", "expected a whole number from 1 to 8"),
                bad(
                        "a word not of the list",
                        "code,kind\nA,aple\n",
                        " column kind: 'aple'; expected one of: cultivar, species, seedling, selection, rootstock, sport"),
                bad("a fixed word in capitals", "code,kind\nA,Cultivar\n", "expected one of: cultivar"),
                bad(
                        "30 February",
                        "code,year\nA,2015-02-30\n",
                        "column year: '2015-02-30'; expected a date that exists"),
                bad("no leap year", "code,year\nA,2015-02-29\n", "expected a date that exists"),
                bad("a thirteenth month", "code,year\nA,2015-13\n", "expected a date that exists"),
                bad("a date the other way round", "code,year\nA,14.05.2016\n", "expected a date that exists"),
                bad("an American date", "code,year\nA,5/14/2016\n", "expected a date that exists"),
                bad("a spreadsheet's day number", "code,year\nA,42504\n", "expected a date that exists"),
                bad(
                        "an empty code",
                        "code,name\n,x\n",
                        "column code: ''; expected something: this cell may not be empty"),
                bad("a code of blanks", "code,name\n  ,x\n", "column code: ''; expected something"),
                bad(
                        "a blank that does not break",
                        "code\nA\u00a0\n",
                        "expected a code without blanks around it or signs"),
                bad("a sign without a width", "code\nA\u200bB\n", "expected a code without blanks around it or signs"),
                bad("a code of two lines", "code\n\"A\nB\"\n", "column code: 'A\\nB'; expected a code without"),
                bad("a word kept for parents", "code\nop\n", "expected a code other than op, self and unknown"),
                bad("a number given twice", "code\nA\nB\nA\n", " line 4, column code: 'A'; this stands in "),
                bad("its own mother", "code,seed_parent\nA,A\n", "expected another record than the one itself"),
                bad(
                        "mother and daughter of each other",
                        "code,seed_parent\nA,B\nB,A\n",
                        "it would descend from itself"),
                bad("a ring of three", "code,pollen_parent\nA,C\nB,A\nC,B\n", "it would descend from itself"),
                bad("a sport of its own sport", "code,sport_of\nA,B\nB,A\n", "it would descend from itself"),
                bad(
                        "a parent not on file",
                        "code,seed_parent\nA,X\n",
                        " line 2, column seed_parent: 'X'; nothing with this code is on file in genotypes"),
                bad("the same candidate twice", "code,pollen_parent\nA,\nB,A|A\n", "different candidates as A|B|C"),
                bad("an empty candidate", "code,pollen_parent\nA,\nB,A||\n", "column pollen_parent: 'A||'; expected"),
                bad(
                        "a wrong check",
                        "code\n26-014-073=X\n",
                        "expected the check Y after 26-014-073: one sign is wrong"),
                bad("two signs of check", "code\n26-014-073=YY\n", "expected a number such as 26-014-073"),
                bad("a check after what has none", "code\nÅKERÖ=A\n", "expected a number such as 26-014-073"));
    }

    private static String late() {
        return IntStream.range(0, 10_000)
                .mapToObj(i -> "K" + i + "X,\n")
                .collect(Collectors.joining("", "code,name\n", "Z,\u2013\n"));
    }

    @ParameterizedTest
    @MethodSource("filesThatComeIn")
    void comesIn(Good good) throws Exception {
        Path file = Files.write(files.resolve("genotypes.csv"), good.bytes());
        call.run(new ImportFiles(), larkmoor, file);
        assertEquals(
                good.codes(),
                program().table(Kinds.GENOTYPES).stream()
                        .map(genotype -> genotype.code().text())
                        .toList());
        assertEquals(0, program().table(Kinds.NOTES).size());
    }

    @ParameterizedTest
    @MethodSource("filesThatAreRefused")
    void isRefused(Bad bad) throws Exception {
        Path file = Files.write(files.resolve("genotypes.csv"), bad.bytes());
        CallRefused refused = assertThrows(CallRefused.class, () -> call.run(new ImportFiles(), larkmoor, file));
        assertTrue(refused.getMessage().contains(file.toString()), refused.getMessage());
        assertTrue(refused.getMessage().contains(bad.message()), refused.getMessage());
        assertTrue(refused.getMessage().length() < 4000, "a message that can be read");
        assertEquals(0, program().edit());
    }

    @ParameterizedTest
    @org.junit.jupiter.params.provider.CsvSource(
            delimiter = ';',
            value = {
                "1e400;a number below 10^308",
                "NaN;a number with a decimal point",
                "Infinity;a number with a decimal point",
                "12,5;a number with a decimal point",
                "1.234,5;a number with a decimal point",
                "0x10;a number with a decimal point",
                "1f;a number with a decimal point",
                "1 000;a number with a decimal point",
                "-61;a number from -60 to 60",
                "12 C;a number with a decimal point"
            })
    void aNumberThatIsNoneIsRefused(String number, String expected) throws Exception {
        Path file =
                Files.writeString(files.resolve("weather.csv"), "time,temp_c\n2026-05-01T00:00,\"" + number + "\"\n");
        CallRefused refused = assertThrows(CallRefused.class, () -> call.run(new ImportFiles(), larkmoor, file));
        assertTrue(
                refused.getMessage().endsWith(" line 2, column temp_c: '" + number + "'; expected " + expected),
                refused.getMessage());
    }

    @Test
    void aNameKeepsItsBlanksAndItsLineEnds() throws Exception {
        Path file = Files.writeString(files.resolve("genotypes.csv"), "code,name,note\nA,  x ,\"a\r\nb\rc\nd\"\n");
        call.run(new ImportFiles(), larkmoor, file);
        var a = program().table(Kinds.GENOTYPES).stream().findFirst().orElseThrow();
        assertEquals(List.of("  x ", "a\r\nb\rc\nd"), List.of(a.name(), a.note()));
    }

    @Test
    void manyBadRowsAreCountedAndTheFirstShown() throws Exception {
        String rows = IntStream.range(0, 500).mapToObj(i -> "A" + i + ",x\n").collect(Collectors.joining());
        Path file = Files.writeString(files.resolve("genotypes.csv"), "code,ploidy\n" + rows);
        CallRefused refused = assertThrows(CallRefused.class, () -> call.run(new ImportFiles(), larkmoor, file));
        assertTrue(refused.getMessage().startsWith("Nothing was stored: 500 rows are refused.\n"));
        assertTrue(refused.getMessage().endsWith("\nand 480 more"));
    }

    @Test
    void aFileThatIsNotThereOrAFolderIsSaidSo() throws Exception {
        Path missing = files.resolve("genotypes.csv");
        assertEquals(
                "Nothing was stored. " + missing + ": there is no such file",
                assertThrows(CallRefused.class, () -> call.run(new ImportFiles(), larkmoor, missing))
                        .getMessage());
        Path folder = Files.createDirectory(files.resolve("plants.csv"));
        assertEquals(
                "Nothing was stored. " + folder + ": it is a folder; name the files in it",
                assertThrows(CallRefused.class, () -> call.run(new ImportFiles(), larkmoor, folder))
                        .getMessage());
    }

    @Test
    void physicalLinesAreCountedAlsoInsideQuotedCells() throws Exception {
        Path file = Files.writeString(
                files.resolve("genotypes.csv"), "code,note\r\nA,\"1\r\n2\r3\n4\"\r\n\r\nB,\r\nC,x\r\nB,\r\n");
        CallRefused refused = assertThrows(CallRefused.class, () -> call.run(new ImportFiles(), larkmoor, file));
        assertTrue(
                refused.getMessage().contains(" line 9, column code: 'B'; this stands in " + file + " line 7"),
                refused.getMessage());
    }

    private static Good good(String what, String text, String... codes) {
        return new Good(what, text.getBytes(UTF_8), List.of(codes));
    }

    private static Bad bad(String what, String text, String message) {
        return new Bad(what, text.getBytes(UTF_8), message);
    }

    private static Bad bad(String what, byte[] bytes, String message) {
        return new Bad(what, bytes, message);
    }

    private static byte[] bytes(String text, int... more) {
        byte[] start = text.getBytes(UTF_8);
        byte[] all = java.util.Arrays.copyOf(start, start.length + more.length);
        for (int i = 0; i < more.length; i++) {
            all[start.length + i] = (byte) more[i];
        }
        return all;
    }

    private Program program() {
        return folders.open(larkmoor, call.clock()).now();
    }
}
