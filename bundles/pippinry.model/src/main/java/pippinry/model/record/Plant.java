package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** One living thing in the ground, a pot or on a branch. It has one genotype; doubt about that is recorded, never overwritten. */
public record Plant(
        @Needed Code<Plant> tag,
        Optional<Code<Genotype>> genotype,
        Optional<PlantKind> kind,
        String rootstock,
        String interstem,
        Optional<Code<Plant>> host,
        OptionalDouble limbHeightM,
        String limbSide,
        Optional<Code<Plant>> copyOf,
        Optional<PartialDate> madeOn,
        Optional<PlantStatus> status,
        Optional<PartialDate> endedOn,
        String cause,
        Optional<Certainty> certainty,
        String note) {

    public Plant {
        Checks.range("limb_height_m", limbHeightM, 0, 30);
        Checks.unlike("host", tag, host);
        Checks.unlike("copy_of", tag, copyOf);
    }
}
