package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Sample;
import pippinry.model.value.Code;

/** Numbers scored on a genotype, its plants and the samples picked from them, by trait. */
public final class Phenotypes {

    private final Program program;
    private final Map<String, Map<Code<Genotype>, List<Double>>> byTrait = new HashMap<>();

    private Phenotypes(Program program) {
        this.program = program;
        program.table(Kinds.SCORES).forEach(row -> row.value().value().number().ifPresent(number -> genotype(
                        row.value().subject().text())
                .ifPresent(genotype -> byTrait.computeIfAbsent(row.value().trait(), any -> new HashMap<>())
                        .computeIfAbsent(genotype, any -> new ArrayList<>())
                        .add(number))));
    }

    /** The scores of a program, gathered once. */
    public static Phenotypes of(Program program) {
        return program.derived(Phenotypes.class, Phenotypes::new);
    }

    /** Every number scored, by genotype; what was not seen is not among them. */
    public Map<Code<Genotype>, List<Double>> of(String trait) {
        return byTrait.getOrDefault(trait, Map.of());
    }

    /** The genotype that a score is about: itself, that of the plant, or that of the plant the sample came from. */
    public Optional<Code<Genotype>> genotype(String subject) {
        Optional<Plant> plant = program.find(Kinds.PLANTS, Code.of(subject));
        if (plant.isEmpty()) {
            plant = program.find(Kinds.SAMPLES, Code.<Sample>of(subject))
                    .flatMap(Sample::plant)
                    .flatMap(code -> program.find(Kinds.PLANTS, code));
        }
        if (plant.isPresent()) {
            return plant.get().genotype();
        }
        return program.find(Kinds.GENOTYPES, Code.<Genotype>of(subject)).map(Genotype::code);
    }
}
