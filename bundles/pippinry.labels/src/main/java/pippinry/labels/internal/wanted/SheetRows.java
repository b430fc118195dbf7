package pippinry.labels.internal.wanted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pippinry.labels.internal.score.RowGroup;
import pippinry.labels.internal.score.ScoreRow;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.Pollination;
import pippinry.model.value.Code;

/** The lines of a sheet for codes in walking order; lines that belong together get one heading. */
public final class SheetRows {
    private record Headed(String heading, ScoreRow row) {}

    private final Program program;
    private final Phrases phrases;

    public SheetRows(Program program) {
        this.program = program;
        this.phrases = new Phrases(program);
    }

    public List<RowGroup> of(List<String> codes) {
        List<RowGroup> groups = new ArrayList<>();
        List<ScoreRow> rows = new ArrayList<>();
        String heading = "";
        for (String code : codes) {
            Headed next = line(code);
            if (!rows.isEmpty() && !next.heading().equals(heading)) {
                groups.add(new RowGroup(heading, rows));
                rows = new ArrayList<>();
            }
            heading = next.heading();
            rows.add(next.row());
        }
        if (!rows.isEmpty()) {
            groups.add(new RowGroup(heading, rows));
        }
        return groups;
    }

    private Headed line(String code) {
        return program.find(Kinds.PLANTS, Code.<Plant>of(code))
                .map(this::plant)
                .or(() -> program.find(Kinds.POLLINATIONS, Code.<Pollination>of(code))
                        .map(this::branch))
                .orElseGet(() -> new Headed("", new ScoreRow("", lot(code))));
    }

    private Headed plant(Plant plant) {
        Optional<Occupancy> place = Standing.of(program).place(plant);
        Tag tag = Numbered.tag(plant.tag().text(), who(plant));
        return place.map(spot -> new Headed(row(spot), new ScoreRow(spot.place(), tag)))
                .orElseGet(() -> new Headed("Not in the ground", new ScoreRow("", tag)));
    }

    /** Parents are no help to a fair score, so only a name that stands on the tree's own tag is printed. */
    private String who(Plant plant) {
        return plant.genotype()
                .flatMap(code -> program.find(Kinds.GENOTYPES, code))
                .map(Genotype::name)
                .orElse("");
    }

    private String row(Occupancy place) {
        String block = place.block().map(Code::text).orElse("");
        return Phrases.row(block.isEmpty() ? "" : "block " + block, RowTags.counted(program, block, place.row()));
    }

    private Headed branch(Pollination branch) {
        Tag tag = Numbered.tag(branch.tag().text(), phrases.parentsOfCross(branch.cross()));
        String flowers = branch.flowers().isPresent() ? branch.flowers().getAsInt() + " fl." : "";
        return new Headed(tree(branch), new ScoreRow(flowers, tag));
    }

    private String tree(Pollination branch) {
        return branch.plant()
                .map(code -> Phrases.row(
                        "on " + code,
                        program.find(Kinds.PLANTS, code)
                                .flatMap(tree -> Standing.of(program).place(tree))
                                .map(Phrases::place)
                                .orElse("")))
                .orElse("Tree not on file");
    }

    private Tag lot(String code) {
        return Numbered.tag(
                code,
                program.table(Kinds.SEEDLOTS)
                        .find(code)
                        .map(row -> phrases.parentsOfCross(row.value().cross()))
                        .orElse(""));
    }
}
