package pippinry.workbench.internal.view;

import pippinry.model.Program;
import pippinry.model.record.GenotypeKind;
import pippinry.model.record.Kinds;
import pippinry.model.record.PlantStatus;
import pippinry.workbench.internal.Session;

/** One line about what is on file. */
record Standing(long seedlings, int crosses, long plants) {

    static String of(Session session) {
        Standing now = session.program().derived(Standing.class, Standing::count);
        String kept = session.store().readOnly()
                ? "open to read only: another window has this program"
                : "all changes kept on disk";
        return "%,d seedlings of %,d crosses, %,d plants alive - %s"
                .formatted(now.seedlings, now.crosses, now.plants, kept);
    }

    private static Standing count(Program program) {
        long seedlings = program.table(Kinds.GENOTYPES).stream()
                .filter(genotype ->
                        genotype.kind().filter(GenotypeKind.SEEDLING::equals).isPresent())
                .count();
        long plants = program.table(Kinds.PLANTS).stream()
                .filter(plant -> plant.status().orElse(PlantStatus.ALIVE) == PlantStatus.ALIVE)
                .count();
        return new Standing(seedlings, program.table(Kinds.CROSSES).size(), plants);
    }
}
