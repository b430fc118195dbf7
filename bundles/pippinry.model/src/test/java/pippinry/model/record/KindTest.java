package pippinry.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KindTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "genotypes;code,name,crop,kind,ploidy,seed_parent,pollen_parent,seed_link,pollen_link,link_ground,sport_of,year,origin,note",
                "plants;tag,genotype,kind,rootstock,interstem,host,limb_height_m,limb_side,copy_of,made_on,status,ended_on,cause,certainty,note",
                "rows;block,row,kind,x_m,y_m,bearing_deg,places,spacing_m,first_place_m,gaps,counted_from,guards_count,training,note",
                "scores;subject,trait,value,unit,date,time,part,scorer,instrument,sample,sheet,note",
                "weather;time,temp_c,wet_min,rain_mm,rh_pct",
                "moves;date,subject,what,direction,person,amount,may_pass_on,protected,health_test,note"
            })
    void theColumnsAreThoseOfThePlainTable(String table, String header) {
        List<String> columns = Kinds.named(table).orElseThrow().columns().stream()
                .map(Column::name)
                .toList();
        assertEquals(List.of(header.split(",")), columns);
    }

    @Test
    void aRowReadsBackAsItWasWritten() throws CellRefused {
        Map<String, String> cells = Map.of(
                "code", "26-014-073",
                "kind", "seedling",
                "seed_parent", "FIE",
                "pollen_parent", "A|B",
                "pollen_link", "doubtful",
                "ploidy", "2",
                "year", "about 2014");
        Genotype read = Kinds.GENOTYPES.read(column -> cells.getOrDefault(column, ""));
        for (Column column : Kinds.GENOTYPES.columns()) {
            assertEquals(cells.getOrDefault(column.name(), ""), Kinds.GENOTYPES.cell(read, column));
        }
        assertEquals(Optional.of("26-014-073"), Kinds.GENOTYPES.keyOf(read));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../x.jpg", "a/../../x.jpg", "/etc/passwd", "C:\\x.jpg", "C:x.jpg", "..\\x.jpg", "a/.."})
    void aPhotoLiesInTheProgramsOwnFolder(String path) {
        CellRefused refused = assertThrows(
                CellRefused.class,
                () -> Kinds.PHOTOS.read(
                        column -> column.equals("file") ? path : (column.equals("subject") ? "FIE" : "")));
        assertEquals("a path within the program's folder photos, such as 2026/0412.jpg", refused.expected());
    }

    @Test
    void equalCellsOfManyRowsShareOneValue() throws CellRefused {
        Note one = note("2016-05-14", "windy");
        Note other = note("2016-05-14", "windy");
        assertSame(one.date(), other.date());
        assertSame(one.text(), other.text());
    }

    private static Note note(String date, String text) throws CellRefused {
        Map<String, String> cells =
                Map.of("subject", new String("FIE"), "date", new String(date), "text", new String(text));
        return Kinds.NOTES.read(cells::get);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "code;'';something: this cell may not be empty",
                "code;X\u00a0;a code without blanks around it or signs that nobody sees",
                "code;X\u200b;a code without blanks around it or signs that nobody sees",
                "code;self;a code other than op, self and unknown, and without |",
                "code;A|B;a code other than op, self and unknown, and without |",
                "kind;apple;one of: cultivar, species, seedling, selection, rootstock, sport",
                "ploidy;two;a whole number",
                "ploidy;9;a whole number from 1 to 8",
                "year;2015-02-30;" + EXPECTED_DATE,
                "seed_parent;X;another record than the one itself"
            })
    void aCellThatCannotBeReadSaysWhatWasExpected(String column, String value, String expected) {
        Map<String, String> cells = new java.util.HashMap<>(Map.of("code", "X"));
        cells.put(column, value);
        CellRefused refused =
                assertThrows(CellRefused.class, () -> Kinds.GENOTYPES.read(name -> cells.getOrDefault(name, "")));
        assertEquals(List.of(column, value, expected), List.of(refused.column(), refused.value(), refused.expected()));
    }

    private static final String EXPECTED_DATE =
            "a date that exists, as 2016-05-14, 2016-05 or 2016, also 'about 2016' or with a time, 2016-05-14T09:30";
}
