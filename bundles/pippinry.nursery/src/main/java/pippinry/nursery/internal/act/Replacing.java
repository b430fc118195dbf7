package pippinry.nursery.internal.act;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantStatus;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.copies.Roster;

/**
 * A plant is lost and its copy takes its place, in one action: the lost one gets its end and cause, its place is closed, the
 * copy leaves where it stood and stands there from that day. Both keep their numbers; no number is used again.
 *
 * @param end what became of the lost one
 */
public record Replacing(Code<Plant> lost, Code<Plant> copy, PlantStatus end, String cause, LocalDate day) {

    public Replacing {
        if (end == PlantStatus.ALIVE) {
            throw new IllegalArgumentException("What became of it? dead, grubbed, lost or given");
        }
        if (cause.isBlank()) {
            throw new IllegalArgumentException("Why was it lost? Give a cause, such as vole or wind");
        }
    }

    public Edit in(Program program, String author) throws NotPossible {
        Plant gone = plant(program, lost);
        Plant next = plant(program, copy);
        if (!Roster.lives(gone) && gone.cause().isBlank()) {
            gone = living(gone);
        }
        requireAlike(gone, next);
        List<Occupancy> places = standing(program, lost);
        if (places.isEmpty()) {
            throw new NotPossible(lost + " stands nowhere on the ground, so there is no place to take");
        }
        Edit.Draft edit = Edit.by(author, copy + " takes the place of " + lost + ": " + cause);
        edit.put(Kinds.PLANTS, ended(gone));
        standing(program, copy).forEach(place -> edit.put(Kinds.PLACES, until(place)));
        places.forEach(place -> edit.put(Kinds.PLACES, until(place)).put(Kinds.PLACES, taken(place)));
        return edit.done();
    }

    private static Plant plant(Program program, Code<Plant> tag) throws NotPossible {
        return program.find(Kinds.PLANTS, tag)
                .orElseThrow(() -> new NotPossible("There is no plant " + tag + " on file"));
    }

    private void requireAlike(Plant gone, Plant next) throws NotPossible {
        if (!Roster.lives(gone)) {
            throw new NotPossible(lost + " has its end on file already: "
                    + gone.status().map(PlantStatus::word).orElse("") + " " + gone.cause());
        }
        if (!Roster.lives(next)) {
            throw new NotPossible(copy + " does not live any more");
        }
        if (gone.genotype().isEmpty() || !gone.genotype().equals(next.genotype())) {
            throw new NotPossible(
                    copy + " is of " + next.genotype().map(Code::text).orElse("unknown identity") + ", " + lost + " of "
                            + gone.genotype().map(Code::text).orElse("unknown identity") + ": it is no copy of it");
        }
    }

    private static List<Occupancy> standing(Program program, Code<Plant> plant) {
        return program.table(Kinds.PLACES).citing(plant.text()).stream()
                .map(Row::value)
                .filter(place -> place.plant().equals(plant) && place.to().isEmpty())
                .toList();
    }

    private Occupancy until(Occupancy place) {
        return new Occupancy(
                place.plant(),
                place.block(),
                place.row(),
                place.place(),
                place.from(),
                Optional.of(PartialDate.of(day)));
    }

    private Occupancy taken(Occupancy place) {
        return new Occupancy(
                copy, place.block(), place.row(), place.place(), Optional.of(PartialDate.of(day)), Optional.empty());
    }

    /** Found dead before anybody wrote down why. */
    private static Plant living(Plant gone) {
        return with(gone, PlantStatus.ALIVE, Optional.empty(), "");
    }

    private Plant ended(Plant gone) {
        return with(gone, end, Optional.of(PartialDate.of(day)), cause);
    }

    private static Plant with(Plant plant, PlantStatus status, Optional<PartialDate> endedOn, String cause) {
        return new Plant(
                plant.tag(),
                plant.genotype(),
                plant.kind(),
                plant.rootstock(),
                plant.interstem(),
                plant.host(),
                plant.limbHeightM(),
                plant.limbSide(),
                plant.copyOf(),
                plant.madeOn(),
                Optional.of(status),
                endedOn,
                cause,
                plant.certainty(),
                plant.note());
    }
}
