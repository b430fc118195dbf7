package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Goal;
import pippinry.model.record.GoalKind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.traits.CropPack;
import pippinry.traits.Locus;
import pippinry.traits.SAllele;
import pippinry.traits.SGenotype;

/** What the parents of a program carry at the loci that speak to its goals, ready for any number of crosses. */
public final class GeneBook {

    private static final String S = "S";

    private final Program program;
    private final Optional<CropPack> pack;
    private final Set<Code<Genotype>> asked;
    private final AlleleFile file;
    private final Map<String, GeneInference> inferences = new HashMap<>();
    private final List<GeneticGoal> goals;
    private final List<Locus> loci;
    private final List<LinkageGroup> groups = new ArrayList<>();
    private final SharePlan plan;
    private final List<String> notes = new ArrayList<>();
    private final Map<Code<Genotype>, Map<String, Dosage>> dosages = new HashMap<>();
    private final Map<Code<Genotype>, List<ParentGenes>> parents = new HashMap<>();
    private final Map<Code<Genotype>, SGenotype> sAlleles = new HashMap<>();

    /**
     * Reads the program.
     *
     * @param parents that crosses will be asked for
     */
    public GeneBook(
            Program program, Optional<CropPack> pack, MapFunction function, Collection<Code<Genotype>> parents) {
        this.program = program;
        this.pack = pack;
        this.asked = Set.copyOf(parents);
        file = new AlleleFile(program, pack);
        List<Goal> wanted = program.table(Kinds.GOALS).stream().toList();
        GoalReading reading = new GoalReading(wanted, pack);
        notes.addAll(reading.notes());
        goals = first(told(program, reading.goals()));
        loci = goals.stream()
                .flatMap(goal -> goal.needs().stream())
                .map(Need::locus)
                .distinct()
                .toList();
        pack.ifPresent(facts -> group(facts, function));
        plan = new SharePlan(goals, groups);
    }

    /** Goals that loci speak to, in the order of the bits of {@link SeedlingShares}. */
    public List<GeneticGoal> goals() {
        return goals;
    }

    /** What could not be read or reckoned, as sentences. */
    public List<String> notes() {
        List<String> all = new ArrayList<>(notes);
        all.addAll(file.faults());
        inferences.forEach((locus, inference) -> {
            if (!inference.exact()) {
                all.add("Genotypes at " + locus
                        + " are inferred by an approximation: the pedigree has too many loops.");
            }
        });
        return all;
    }

    public int ploidy(Code<Genotype> genotype) {
        return file.ploidy(genotype);
    }

    public SGenotype sAlleles(Code<Genotype> genotype) {
        return sAlleles.computeIfAbsent(genotype, file::sAlleles);
    }

    /** Copies of the effect allele by locus. */
    public Map<String, Dosage> dosages(Code<Genotype> genotype) {
        return dosages.computeIfAbsent(genotype, this::read);
    }

    /** Whether something is known of one of the goal's loci in one of the parents. */
    public boolean told(int goal, Code<Genotype> seed, Code<Genotype> pollen) {
        return goals.get(goal).needs().stream()
                .map(need -> need.locus().name())
                .anyMatch(locus -> dosages(seed).get(locus).told()
                        || dosages(pollen).get(locus).told());
    }

    /** Shares expected over what is not known of the parents. */
    public SeedlingShares shares(Code<Genotype> seed, Code<Genotype> pollen) {
        return plan.shares(eggs(genes(seed)), pollen(genes(pollen), seed, pollen));
    }

    /**
     * Shares for every case that what is known of the parents leaves open, with the chance of the case; one case with the
     * expected shares if there are more than {@code most}.
     */
    public Map<SeedlingShares, Double> cases(Code<Genotype> seed, Code<Genotype> pollen, int most) {
        List<List<ParentGenes>> seeds = CasesOfGenes.of(genes(seed), most);
        List<List<ParentGenes>> pollens = CasesOfGenes.of(genes(pollen), most);
        Map<SeedlingShares, Double> cases = new LinkedHashMap<>();
        if ((long) seeds.size() * pollens.size() > most || seeds.isEmpty() || pollens.isEmpty()) {
            cases.put(shares(seed, pollen), 1.0);
            return cases;
        }
        List<Double> seedChances = CasesOfGenes.chances(genes(seed));
        List<Double> pollenChances = CasesOfGenes.chances(genes(pollen));
        for (int i = 0; i < seeds.size(); i++) {
            for (int j = 0; j < pollens.size(); j++) {
                cases.put(
                        plan.shares(eggs(seeds.get(i)), pollen(pollens.get(j), seed, pollen)),
                        seedChances.get(i) * pollenChances.get(j));
            }
        }
        return cases;
    }

    private static List<double[]> eggs(List<ParentGenes> genes) {
        return genes.stream().map(ParentGenes::gametes).toList();
    }

    /** In the group with S only the grains that the style lets through count. */
    private List<double[]> pollen(List<ParentGenes> genes, Code<Genotype> seed, Code<Genotype> pollen) {
        List<double[]> gametes = new ArrayList<>();
        for (ParentGenes some : genes) {
            int bit = some.group().loci().indexOf(S);
            gametes.add(bit < 0 ? some.gametes() : some.gametes(kind -> passes(kind >> bit & 1, seed, pollen)));
        }
        return gametes;
    }

    private boolean passes(int which, Code<Genotype> seed, Code<Genotype> pollen) {
        SGenotype style = sAlleles(seed);
        SGenotype grains = sAlleles(pollen);
        if (!style.sameSeries(grains) || grains.ploidy() != 2) {
            return true;
        }
        SAllele grain = grains.alleles().get(which);
        return !grain.known() || style.alleles().stream().noneMatch(allele -> allele.stops(grain));
    }

    private List<ParentGenes> genes(Code<Genotype> genotype) {
        List<ParentGenes> known = parents.get(genotype);
        if (known == null) {
            Map<String, Dosage> own = dosages(genotype);
            known = groups.stream()
                    .map(group -> ParentGenes.of(group, own, seedSide(genotype, group)))
                    .toList();
            parents.put(genotype, known);
        }
        return known;
    }

    /** Which side single copies came from; it matters only where loci are linked. */
    private Map<String, Double> seedSide(Code<Genotype> genotype, LinkageGroup group) {
        Map<String, Double> sides = new HashMap<>();
        for (String locus : group.loci()) {
            if (group.loci().size() > 1) {
                sides.put(
                        locus,
                        locus.equals(S) ? sSide(genotype) : inference(locus).fromSeedParent(genotype));
            }
        }
        return sides;
    }

    /** Probability that the second S-allele came from the seed parent. */
    private double sSide(Code<Genotype> genotype) {
        SGenotype own = sAlleles(genotype);
        Optional<Genotype> record = program.find(Kinds.GENOTYPES, Descent.clone(program, genotype));
        if (record.isEmpty() || own.ploidy() != 2) {
            return 0.5;
        }
        Descent seed = Descent.ofSeedParent(program, record.get());
        Descent pollen = Descent.ofPollenParent(program, record.get());
        SAllele first = own.alleles().get(0);
        SAllele second = own.alleles().get(1);
        double secondFromSeed = gives(seed, second) * gives(pollen, first);
        double firstFromSeed = gives(seed, first) * gives(pollen, second);
        double sum = secondFromSeed + firstFromSeed;
        return sum == 0 ? 0.5 : secondFromSeed / sum;
    }

    /** How likely a descent gives an S-allele, up to a factor that is the same for both alleles. */
    private double gives(Descent descent, SAllele allele) {
        double sum = descent.wrong() * 0.1;
        for (Code<Genotype> candidate : descent.candidates()) {
            SGenotype parent = sAlleles(candidate);
            long has = parent.alleles().stream().filter(allele::equals).count();
            long open = parent.alleles().stream().filter(any -> !any.known()).count();
            sum += (1 - descent.wrong())
                    * (has + 0.1 * open)
                    / descent.candidates().size();
        }
        return sum;
    }

    private GeneInference inference(String locus) {
        GeneInference known = inferences.get(locus);
        if (known == null) {
            Locus found = loci.stream()
                    .filter(one -> one.name().equals(locus))
                    .findFirst()
                    .orElseThrow();
            known = new GeneInference(program, file, pack.orElseThrow(), found, asked);
            inferences.put(locus, known);
        }
        return known;
    }

    private Map<String, Dosage> read(Code<Genotype> genotype) {
        Map<String, Dosage> own = new HashMap<>();
        loci.forEach(locus -> own.put(locus.name(), inference(locus.name()).dosage(genotype)));
        int ploidy = file.ploidy(genotype);
        // One chromosome carries the first S-allele, the other the second: the bit tells which.
        own.put(S, ploidy == 2 ? new Dosage(new double[] {0, 1, 0}, "S", true) : Dosage.prior(ploidy, 0.5));
        return own;
    }

    /** Goals with only those loci at which something is on file for some genotype; a goal without any is noted. */
    private List<GeneticGoal> told(Program program, List<GeneticGoal> all) {
        List<Code<Genotype>> genotypes =
                program.table(Kinds.GENOTYPES).stream().map(Genotype::code).toList();
        Map<String, Boolean> known = new HashMap<>();
        List<GeneticGoal> some = new ArrayList<>();
        for (GeneticGoal goal : all) {
            List<Need> needs = goal.needs().stream()
                    .filter(need -> known.computeIfAbsent(need.locus().name(), locus -> genotypes.stream()
                            .anyMatch(code -> file.at(code, locus).isPresent())))
                    .toList();
            if (!needs.isEmpty()) {
                some.add(new GeneticGoal(goal.goal(), needs, goal.decides()));
            } else if (goal.decides()) {
                notes.add("Genes are known for " + goal.goal().trait() + " ("
                        + goal.needs().stream().map(need -> need.locus().name()).collect(Collectors.joining(", "))
                        + "), but nothing is on file about them for any genotype here.");
            }
        }
        return some;
    }

    private List<GeneticGoal> first(List<GeneticGoal> all) {
        List<GeneticGoal> musts = new ArrayList<>(all.stream()
                .filter(goal -> goal.goal().kind().equals(Optional.of(GoalKind.MUST)))
                .toList());
        all.stream().filter(goal -> !musts.contains(goal)).forEach(musts::add);
        if (musts.size() > SharePlan.MOST_GOALS) {
            notes.add("Only the first " + SharePlan.MOST_GOALS + " goals with known loci are reckoned with.");
        }
        return musts.stream().limit(SharePlan.MOST_GOALS).toList();
    }

    private void group(CropPack pack, MapFunction function) {
        Set<String> names = new LinkedHashSet<>();
        goals.forEach(
                goal -> goal.needs().forEach(need -> names.add(need.locus().name())));
        names.add(S);
        GroupsOfLoci sorted = new GroupsOfLoci(names, pack, function);
        notes.addAll(sorted.notes());
        sorted.groups().stream()
                .filter(group -> !group.loci().equals(List.of(S)))
                .forEach(groups::add);
    }
}
