package pippinry.crossing.internal.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;
import pippinry.statistics.additive.AdditiveFit;
import pippinry.statistics.selection.FamilyOutlook;

/**
 * One trait of a program as far as crosses are concerned: what each genotype is worth with the year taken out, how much of it is
 * passed on, and how families spread.
 *
 * <p>Records are genotype + year + rest. The genotypic variance is the variance of the genotypes' means less their error; it
 * gives the repeatability t. A parent's additive value is its lead over the general mean times n h2 / (1 + (n-1) t), so few
 * records are drawn in; a parent without records gets the mean of its own parents' values, else the general mean. A family's mean
 * is the mean of both parents' additive values plus a shift, since families may fall short of their parents (fruit size: 34 % below,
 * Brown 1960, Euphytica); the shift is learnt from the families here over the published one. Within a family true values
 * spread with the genotypic variance less half the additive. Falconer, D. S. & Mackay, T. F. C. 1996. Introduction to Quantitative
 * Genetics, 4th ed., chapters 8 to 10. Normal values and parents not selected are assumed.
 */
public final class TraitModel {

    /** Below this many genotypes with records nothing is foretold. */
    static final int LEAST_GENOTYPES = 8;

    private final Program program;
    private final AdditiveFit fit;
    private final Map<String, Double> values = new HashMap<>();
    private final Map<Code<Genotype>, double[]> leads = new HashMap<>();
    private final double mean;
    private final double genotypic;
    private final double phenotypic;
    private final double heritability;
    private final double shift;
    private final double shiftDoubt;

    private TraitModel(Program program, AdditiveFit fit, double publishedShift) {
        this.program = program;
        this.fit = fit;
        fit.levels().forEach(level -> fit.expected(List.of(Optional.of(level), Optional.empty()))
                .ifPresent(value -> values.put(level, value.value())));
        mean = values.values().stream().mapToDouble(v -> v).average().orElse(0);
        genotypic = Math.max(1e-9, variance() - errorOfMeans());
        phenotypic = genotypic + Math.max(0, residual());
        List<FamilyRecord> families = families();
        heritability = Heritability.of(regression(families), genotypic / phenotypic);
        double[] learnt = learnShift(families, publishedShift * mean);
        shift = learnt[0];
        shiftDoubt = learnt[1];
    }

    /**
     * Learns a trait; empty when fewer than {@value #LEAST_GENOTYPES} genotypes have records or they do not differ.
     *
     * @param publishedShift how far families lie from the mean of their parents by what is published, as a share of the mean
     */
    public static Optional<TraitModel> of(Program program, String trait, double publishedShift) {
        List<AdditiveFit.Observation> records = TraitRecords.of(program).of(trait);
        if (records.stream().map(record -> record.levels().get(0)).distinct().count() < LEAST_GENOTYPES) {
            return Optional.empty();
        }
        TraitModel model = new TraitModel(program, new AdditiveFit(2, records), publishedShift);
        return model.variance() < 1e-12 ? Optional.empty() : Optional.of(model);
    }

    /** Mean over the genotypes with records, the year taken out. */
    public double mean() {
        return mean;
    }

    /** Share of the variance of a single record that is passed on. */
    public double heritability() {
        return heritability;
    }

    /** Correlation of two records of one genotype in different years. */
    public double repeatability() {
        return genotypic / phenotypic;
    }

    /** Standard deviation of true values among all genotypes. */
    public double deviation() {
        return Math.sqrt(genotypic);
    }

    /** Value of a genotype by its own records, the year taken out; empty without records. */
    public Optional<Double> value(Code<Genotype> genotype) {
        return Optional.ofNullable(values.get(genotype.text()));
    }

    /** True value to be expected of a genotype itself, its records drawn in by how few they are. */
    public double expectedValue(Code<Genotype> genotype) {
        return value(genotype)
                .map(value -> mean + reliability(genotype, repeatability()) * (value - mean))
                .orElse(mean);
    }

    /**
     * What a cross promises.
     *
     * @param lostToInbreeding mean inbreeding coefficient of the two parents, which leaves less to segregate
     */
    public FamilyOutlook outlook(Code<Genotype> seed, Code<Genotype> pollen, double lostToInbreeding) {
        double[] one = lead(seed);
        double[] other = lead(pollen);
        double doubt = (1 - one[1] + 1 - other[1]) * additive() / 4;
        double spread = Math.max(genotypic / 4, genotypic - additive() / 2 * (1 + lostToInbreeding));
        return new FamilyOutlook(
                mean + shift + (one[0] + other[0]) / 2, Math.sqrt(doubt + shiftDoubt * shiftDoubt), Math.sqrt(spread));
    }

    /** True when the genotype or one of its parents has records. */
    public boolean told(Code<Genotype> genotype) {
        return lead(genotype)[1] > 0;
    }

    /** Additive lead and its reliability, reckoned once for each genotype. */
    private double[] lead(Code<Genotype> genotype) {
        return leads.computeIfAbsent(
                genotype, any -> new double[] {additiveLead(genotype, 1), additiveReliability(genotype)});
    }

    private double additive() {
        return heritability * phenotypic;
    }

    /** Additive value as a deviation from the mean; parents are asked once where the genotype itself has no records. */
    private double additiveLead(Code<Genotype> genotype, int generations) {
        Optional<Double> own = value(genotype);
        if (own.isPresent()) {
            return reliability(genotype, heritability) * (own.get() - mean);
        }
        if (generations == 0) {
            return 0;
        }
        double sum = 0;
        for (Code<Genotype> parent : parents(genotype)) {
            sum += additiveLead(parent, generations - 1) / 2;
        }
        return sum;
    }

    private double additiveReliability(Code<Genotype> genotype) {
        if (value(genotype).isPresent()) {
            return reliability(genotype, heritability);
        }
        return parents(genotype).stream()
                .filter(parent -> value(parent).isPresent())
                .mapToDouble(parent -> reliability(parent, heritability) / 4)
                .sum();
    }

    /** n h2 / (1 + (n - 1) t). */
    private double reliability(Code<Genotype> genotype, double share) {
        int n = fit.records(genotype.text());
        return n * share / (1 + (n - 1) * repeatability());
    }

    private List<Code<Genotype>> parents(Code<Genotype> genotype) {
        List<Code<Genotype>> parents = new ArrayList<>();
        program.find(Kinds.GENOTYPES, genotype).ifPresent(record -> {
            record.seedParent().ifPresent(parents::add);
            if (record.pollenParent().how() == PollenParent.How.KNOWN) {
                parents.addAll(record.pollenParent().candidates());
            }
        });
        return parents;
    }

    private double variance() {
        double sum = values.values().stream()
                .mapToDouble(v -> (v - mean) * (v - mean))
                .sum();
        return sum / Math.max(1, values.size() - 1);
    }

    private double residual() {
        return fit.degreesOfFreedom() > 0 ? fit.residualVariance() : variance() / 2;
    }

    private double errorOfMeans() {
        return values.keySet().stream()
                .mapToDouble(level -> residual() / fit.records(level))
                .average()
                .orElse(0);
    }

    private record FamilyRecord(Code<Genotype> seed, Code<Genotype> pollen, List<Double> members) {}

    private List<FamilyRecord> families() {
        Map<String, FamilyRecord> families = new HashMap<>();
        program.table(Kinds.GENOTYPES).forEach(row -> {
            Genotype member = row.value();
            List<Code<Genotype>> parents = parents(member.code());
            Optional<Double> value = value(member.code());
            if (parents.size() == 2 && value.isPresent()) {
                families.computeIfAbsent(
                                parents.toString(),
                                any -> new FamilyRecord(parents.get(0), parents.get(1), new ArrayList<>()))
                        .members()
                        .add(value.get());
            }
        });
        return families.values().stream()
                .filter(family -> value(family.seed()).isPresent()
                        && value(family.pollen()).isPresent())
                .toList();
    }

    private List<Heritability.Family> regression(List<FamilyRecord> families) {
        return families.stream()
                .map(family -> new Heritability.Family(
                        (value(family.seed()).orElseThrow()
                                                + value(family.pollen()).orElseThrow())
                                        / 2
                                - mean,
                        average(family) - mean,
                        phenotypic / family.members().size() + genotypic / 4))
                .toList();
    }

    /** Mean shift of the families here and its standard deviation, over the published one. */
    private double[] learnShift(List<FamilyRecord> families, double published) {
        double prior = Math.max(genotypic / 4, published * published / 4);
        double precision = 1 / prior;
        double weighted = published / prior;
        for (FamilyRecord family : families) {
            double expected = mean + (additiveLead(family.seed(), 0) + additiveLead(family.pollen(), 0)) / 2;
            double variance = phenotypic / family.members().size() + genotypic / 4;
            precision += 1 / variance;
            weighted += (average(family) - expected) / variance;
        }
        return new double[] {weighted / precision, Math.sqrt(1 / precision)};
    }

    private static double average(FamilyRecord family) {
        return family.members().stream().mapToDouble(v -> v).average().orElseThrow();
    }
}
