package pippinry.labels.internal.wanted;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** A program of a few records at Larkmoor, written as rows of the plain tables. */
public final class SmallProgram {
    private final Edit.Draft draft = Edit.by("IN", "for a test");

    /** A row of cells {@code column=value}. */
    public <T extends Record> SmallProgram row(Kind<T> kind, String... cells) {
        Map<String, String> row = new HashMap<>();
        for (String cell : cells) {
            row.put(cell.substring(0, cell.indexOf('=')), cell.substring(cell.indexOf('=') + 1));
        }
        try {
            draft.put(kind, kind.read(column -> row.getOrDefault(column, "")));
        } catch (CellRefused e) {
            throw new IllegalArgumentException(e);
        }
        return this;
    }

    public Edit edit() {
        return draft.done();
    }

    public Program program() {
        try {
            return Program.empty().apply(edit(), Instant.EPOCH).program();
        } catch (EditRefused e) {
            throw new IllegalStateException(e);
        }
    }

    /** Two crosses of 2026, one with branches; seedlings of 2024 in a row, in pots and grafted. */
    public static SmallProgram larkmoor() {
        return new SmallProgram()
                .row(Kinds.GENOTYPES, "code=GOLD", "name=Golden Delicious", "kind=cultivar")
                .row(Kinds.GENOTYPES, "code=PRIM", "name=Prima", "kind=cultivar")
                .row(Kinds.GENOTYPES, "code=COX", "name=Cox’s Orange Pippin", "kind=cultivar")
                .row(Kinds.GENOTYPES, cells(1))
                .row(Kinds.GENOTYPES, cells(2))
                .row(Kinds.GENOTYPES, cells(10))
                .row(
                        Kinds.CROSSES,
                        "code=26-014",
                        "year=2026",
                        "seed_parent=GOLD",
                        "pollen_parent=PRIM",
                        "seedlings_wanted=60")
                .row(Kinds.CROSSES, "code=26-015", "year=2026", "seed_parent=COX", "pollen_parent=GOLD|PRIM")
                .row(Kinds.CROSSES, "code=24-003", "year=2024", "seed_parent=COX", "pollen_parent=op")
                .row(Kinds.BLOCKS, "block=A", "rows=2", "places_per_row=20")
                .row(Kinds.ROWS, "block=A", "row=2", "counted_from=the gate", "guards_count=no")
                .row(Kinds.PLANTS, "tag=COX-A", "genotype=COX", "kind=graft", "rootstock=M.9", "status=alive")
                .row(Kinds.PLANTS, "tag=24-003-001A", "genotype=24-003-001", "kind=own-root", "status=alive")
                .row(Kinds.PLANTS, "tag=24-003-002A", "genotype=24-003-002", "kind=own-root", "status=dead")
                .row(
                        Kinds.PLANTS,
                        "tag=24-003-002B",
                        "genotype=24-003-002",
                        "kind=graft",
                        "rootstock=M.27",
                        "made_on=2026-03-02",
                        "status=alive",
                        "certainty=doubtful")
                .row(
                        Kinds.PLANTS,
                        "tag=24-003-010B",
                        "genotype=24-003-010",
                        "kind=limb",
                        "host=COX-A",
                        "limb_height_m=1.2",
                        "limb_side=S",
                        "made_on=2025-03-02",
                        "status=alive")
                .row(Kinds.PLACES, "plant=COX-A", "block=A", "row=2", "place=10", "from=2019-11")
                .row(Kinds.PLACES, "plant=24-003-002B", "block=A", "row=2", "place=9", "from=2026-03")
                .row(
                        Kinds.POLLINATIONS,
                        "tag=26-015/2",
                        "cross=26-015",
                        "plant=COX-A",
                        "kind=hand",
                        "flowers=24",
                        "set_fruits=3")
                .row(Kinds.POLLINATIONS, "tag=26-015/10", "cross=26-015", "plant=COX-A", "kind=control_no_pollen")
                .row(Kinds.POLLINATIONS, "tag=T-0041")
                .row(
                        Kinds.SEEDLOTS,
                        "code=25-002-S1",
                        "source=bought fruit",
                        "harvested_on=2025-10-03",
                        "seeds_full=84",
                        "kept=damp sand");
    }

    private static String[] cells(int number) {
        return new String[] {
            "code=24-003-%03d".formatted(number), "kind=seedling", "seed_parent=COX", "pollen_parent=op", "year=2024"
        };
    }
}
