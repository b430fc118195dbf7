package pippinry.workbench.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pippinry.workbench.internal.Programs.edited;
import static pippinry.workbench.internal.Programs.row;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Kinds;

class FindingsTest {

    private final Program program = edited(
                    Program.empty(),
                    Edit.by("IN", "for a test")
                            .put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, "code", "FLO", "name", "Florina"))
                            .put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, "code", "26-014-073", "kind", "seedling"))
                            .put(
                                    Kinds.NAMES,
                                    row(Kinds.NAMES, "subject", "26-014-073", "name", "red one", "kind", "nickname"))
                            .put(Kinds.PLANTS, row(Kinds.PLANTS, "tag", "26-014-073B", "genotype", "26-014-073")))
            .program();

    @ParameterizedTest
    @CsvSource({
        "florina, FLO",
        "flo, FLO",
        "26-014-073, 26-014-073",
        "26014073, 26-014-073",
        "26 014 073b, 26-014-073B",
        "RED, 26-014-073",
        "nickname, 26-014-073"
    })
    void findsByNumberNameAndFurtherName(String typed, String number) {
        assertEquals(number, Findings.in(program).by(typed).get(0).number());
    }

    @Test
    void whatBeginsWithTheWordsComesFirst() {
        Program more = edited(
                        program,
                        Edit.by("IN", "more")
                                .put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, "code", "AFLO", "name", "another"))
                                .put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, "code", "FLO2", "name", "second")))
                .program();
        assertEquals("FLO", Findings.in(more).by("flo").get(0).number());
        assertEquals("AFLO", Findings.in(more).by("flo").get(2).number());
    }

    @Test
    void nothingTypedFindsNothing() {
        assertTrue(Findings.in(program).by("  ").isEmpty());
    }
}
