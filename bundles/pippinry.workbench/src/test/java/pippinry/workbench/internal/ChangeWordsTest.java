package pippinry.workbench.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pippinry.workbench.internal.Programs.edited;
import static pippinry.workbench.internal.Programs.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Kinds;

class ChangeWordsTest {

    private final Program program = edited(
                    Program.empty(),
                    Edit.by("IN", "first").put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, "code", "FLO", "name", "Florina")))
            .program();

    @Test
    void aChangedCellIsToldWithWhatStoodThere() {
        List<String> words = ChangeWords.of(edited(
                        program,
                        Edit.by("IN", "second")
                                .put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, "code", "FLO", "year", "1964")))
                .changes());
        assertEquals(List.of("genotypes: 1", "    FLO: name Florina → nothing, year nothing → 1964"), words);
    }

    @Test
    void newRecordsAreToldByTheirKind() {
        List<String> words = ChangeWords.of(edited(
                        program,
                        Edit.by("IN", "second")
                                .put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, "code", "COX"))
                                .put(Kinds.NOTES, row(Kinds.NOTES, "subject", "COX", "text", "canker"))
                                .put(Kinds.GENOTYPES, row(Kinds.GENOTYPES, "code", "TOP")))
                .changes());
        assertEquals(List.of("genotypes: 2", "    COX: new", "    TOP: new", "notes: 1", "    COX canker: new"), words);
    }

    @Test
    void ofManyAlikeOnlyTheFirstAreTold() {
        Edit.Draft many = Edit.by("IN", "many");
        for (int i = 0; i < 100; i++) {
            many.put(Kinds.NOTES, row(Kinds.NOTES, "subject", "FLO", "text", "note " + i));
        }
        List<String> words = ChangeWords.of(edited(program, many).changes());
        assertEquals("notes: 100", words.get(0));
        assertEquals(42, words.size());
        assertEquals("    and 60 more", words.get(41));
    }
}
