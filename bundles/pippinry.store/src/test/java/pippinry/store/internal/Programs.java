package pippinry.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pippinry.store.internal.Rows.genotype;

import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** What the tests of an open program do and ask again and again. */
final class Programs {

    private Programs() {}

    static HistoryLine put(ProgramStore store, String code, String name) throws EditRefused {
        return store.apply(
                Edit.by("IN", code).put(Kinds.GENOTYPES, genotype(code, name)).done());
    }

    static String name(Program program, String code) {
        return program.table(Kinds.GENOTYPES).find(code).orElseThrow().value().name();
    }

    static void assertAlike(Program expected, Program found) {
        assertEquals(expected.edit(), found.edit());
        assertEquals(expected.time(), found.time());
        for (Kind<?> kind : Kinds.ALL) {
            assertEquals(expected.table(kind).rows(), found.table(kind).rows(), kind.table());
            assertEquals(expected.table(kind).nextId(), found.table(kind).nextId(), kind.table());
        }
    }
}
