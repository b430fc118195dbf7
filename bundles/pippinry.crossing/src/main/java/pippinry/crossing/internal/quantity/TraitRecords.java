package pippinry.crossing.internal.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.crossing.internal.genes.Phenotypes;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Sample;
import pippinry.model.record.Score;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.statistics.additive.AdditiveFit;

/** One number for each genotype, trait and year: the mean of that year's scores on all its plants and samples. */
final class TraitRecords {

    private static final String NO_YEAR = "?";

    private final Map<String, List<AdditiveFit.Observation>> byTrait = new HashMap<>();

    private TraitRecords(Program program) {
        Map<String, Map<List<String>, double[]>> sums = new HashMap<>();
        Phenotypes phenotypes = Phenotypes.of(program);
        program.table(Kinds.SCORES).forEach(row -> {
            Score score = row.value();
            Optional<Code<Genotype>> genotype =
                    phenotypes.genotype(score.subject().text());
            if (genotype.isPresent() && score.value().number().isPresent()) {
                List<String> levels = List.of(genotype.get().text(), year(program, score));
                double[] sum = sums.computeIfAbsent(score.trait(), any -> new HashMap<>())
                        .computeIfAbsent(levels, any -> new double[2]);
                sum[0] += score.value().number().getAsDouble();
                sum[1]++;
            }
        });
        sums.forEach((trait, years) -> byTrait.put(trait, observations(years)));
    }

    static TraitRecords of(Program program) {
        return program.derived(TraitRecords.class, TraitRecords::new);
    }

    List<AdditiveFit.Observation> of(String trait) {
        return byTrait.getOrDefault(trait, List.of());
    }

    private static List<AdditiveFit.Observation> observations(Map<List<String>, double[]> years) {
        List<AdditiveFit.Observation> records = new ArrayList<>();
        years.forEach((levels, sum) -> records.add(new AdditiveFit.Observation(levels, sum[0] / sum[1])));
        return records;
    }

    private static String year(Program program, Score score) {
        Optional<PartialDate> date = score.date().or(() -> program.find(
                        Kinds.SAMPLES, Code.<Sample>of(score.subject().text()))
                .flatMap(Sample::pickedOn));
        return date.map(known -> Integer.toString(known.year().getValue())).orElse(NO_YEAR);
    }
}
