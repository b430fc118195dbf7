package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.statistics.discrete.Network;
import pippinry.traits.CropPack;
import pippinry.traits.Locus;

/**
 * Copies of the effect allele at one locus for every genotype of a program, inferred from all that bears on it: alleles on file,
 * what is seen of the plant itself, its parents, and its scored offspring.
 *
 * <p>Mendelian likelihood on the pedigree, by {@link Network}: exact on pedigrees without dense loops, else an approximation
 * that is told apart. Founders carry the effect allele with the frequency of the crop pack; links may be wrong as {@link
 * Descent} says; what scores say is in {@link Penetrance}. Triploids stay outside: as parents they give gametes by their own
 * dosage. Seedlings that nobody descends from and nobody asks for are summed out beforehand.
 */
public final class GeneInference {

    private final Program program;
    private final AlleleFile file;
    private final Locus locus;
    private final Penetrance penetrance;
    private final Map<Code<Genotype>, Integer> numbers = new LinkedHashMap<>();
    private final Map<Code<Genotype>, double[]> posterior = new HashMap<>();
    private boolean exact = true;

    /**
     * Infers.
     *
     * @param asked genotypes whose dosage is wanted; parents of others are answered too
     */
    public GeneInference(Program program, AlleleFile file, CropPack pack, Locus locus, Set<Code<Genotype>> asked) {
        this.program = program;
        this.file = file;
        this.locus = locus;
        this.penetrance = new Penetrance(locus, pack, Phenotypes.of(program));
        number(asked);
        Network network = new Network(sizes());
        program.table(Kinds.GENOTYPES).forEach(row -> tie(network, row.value()));
        Network.Marginals marginals = network.marginals();
        exact = marginals.exact();
        numbers.forEach((code, number) -> posterior.put(code, marginals.of().get(number)));
    }

    /** False when the pedigree had too many loops for an exact answer. */
    public boolean exact() {
        return exact;
    }

    /** The dosage with its ground; what is on file and certain stays as it is. */
    public Dosage dosage(Code<Genotype> genotype) {
        Dosage own = file.dosage(genotype, locus, locus.frequency());
        double[] inferred = posterior.get(Descent.clone(program, genotype));
        if (own.certain() || inferred == null || Arrays.stream(inferred).sum() < 0.5) {
            return own;
        }
        double moved = 0;
        for (int copies = 0; copies <= 2; copies++) {
            moved = Math.max(moved, Math.abs(inferred[copies] - own.chance(copies)));
        }
        String ground = own.told() ? own.ground() + ", relatives and scores" : "inferred from relatives and scores";
        return moved < 0.01 ? own : new Dosage(inferred, ground, true);
    }

    /** Probability that the single copy of a genotype with one came from its seed parent. */
    public double fromSeedParent(Code<Genotype> genotype) {
        Optional<Genotype> record = program.find(Kinds.GENOTYPES, Descent.clone(program, genotype));
        if (record.isEmpty()) {
            return 0.5;
        }
        double egg = gamete(Descent.ofSeedParent(program, record.get()));
        double pollen = gamete(Descent.ofPollenParent(program, record.get()));
        double seed = egg * (1 - pollen);
        double other = pollen * (1 - egg);
        return seed + other == 0 ? 0.5 : seed / (seed + other);
    }

    /** Expected share of the effect allele in the gametes of a descent. */
    private double gamete(Descent descent) {
        double sum = 0;
        for (Code<Genotype> candidate : descent.candidates()) {
            sum += dosage(candidate).gamete() / descent.candidates().size();
        }
        return (1 - descent.wrong()) * sum + descent.wrong() * locus.frequency();
    }

    private void number(Set<Code<Genotype>> asked) {
        Set<Code<Genotype>> wanted = new HashSet<>();
        asked.forEach(code -> wanted.add(Descent.clone(program, code)));
        program.table(Kinds.GENOTYPES).forEach(row -> {
            wanted.addAll(Descent.ofSeedParent(program, row.value()).candidates());
            wanted.addAll(Descent.ofPollenParent(program, row.value()).candidates());
        });
        wanted.stream()
                .filter(code -> file.ploidy(code) == 2)
                .sorted()
                .forEach(code -> numbers.put(code, numbers.size()));
    }

    private int[] sizes() {
        int[] sizes = new int[numbers.size()];
        Arrays.fill(sizes, 3);
        return sizes;
    }

    private void tie(Network network, Genotype genotype) {
        boolean isSport = !Descent.clone(program, genotype.code()).equals(genotype.code());
        if (isSport || file.ploidy(genotype.code()) != 2) {
            return;
        }
        double[] seen = seen(genotype.code());
        Descent seed = Descent.ofSeedParent(program, genotype);
        Descent pollen = Descent.ofPollenParent(program, genotype);
        List<Integer> unknowns = new ArrayList<>();
        Integer child = numbers.get(genotype.code());
        add(unknowns, seed);
        add(unknowns, pollen);
        if (child != null) {
            unknowns.add(child);
        } else if (unknowns.isEmpty() || flat(seen)) {
            return;
        }
        int[] scope = unknowns.stream().mapToInt(number -> number).toArray();
        double[] weights = new double[(int) Math.pow(3, scope.length)];
        int[] state = new int[scope.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = weight(scope, state, child, seed, pollen, seen);
            for (int digit = scope.length - 1; digit >= 0 && ++state[digit] == 3; digit--) {
                state[digit] = 0;
            }
        }
        network.tie(scope, weights);
    }

    private double weight(int[] scope, int[] state, Integer child, Descent seed, Descent pollen, double[] seen) {
        double egg = gamete(seed, scope, state);
        double grain = gamete(pollen, scope, state);
        double[] copies = {(1 - egg) * (1 - grain), egg * (1 - grain) + grain * (1 - egg), egg * grain};
        if (child != null) {
            int own = state[scope.length - 1];
            return copies[own] * seen[own];
        }
        return copies[0] * seen[0] + copies[1] * seen[1] + copies[2] * seen[2];
    }

    /** Share of the effect allele in the gametes, with the parents in these states. */
    private double gamete(Descent descent, int[] scope, int[] state) {
        double sum = 0;
        for (Code<Genotype> candidate : descent.candidates()) {
            Integer number = numbers.get(candidate);
            double share = number == null
                    ? file.dosage(candidate, locus, locus.frequency()).gamete()
                    : 0;
            for (int i = 0; number != null && i < scope.length; i++) {
                share = scope[i] == number ? state[i] / 2.0 : share;
            }
            sum += share / descent.candidates().size();
        }
        return (1 - descent.wrong()) * sum + descent.wrong() * locus.frequency();
    }

    private void add(List<Integer> unknowns, Descent descent) {
        for (Code<Genotype> candidate : descent.candidates()) {
            Integer number = numbers.get(candidate);
            if (number != null && !unknowns.contains(number)) {
                unknowns.add(number);
            }
        }
    }

    /** Likelihood of what is on file and seen of the genotype itself, for 0, 1 and 2 copies. */
    private double[] seen(Code<Genotype> code) {
        double[] seen = {1, 1, 1};
        Dosage own = file.dosage(code, locus, locus.frequency());
        double[] shows = penetrance.of(code);
        Need shown = new Need(locus, true);
        for (int copies = 0; copies <= 2; copies++) {
            // The prior is in the descent already: only whether the statement allows the dosage counts here.
            seen[copies] *= own.told() && own.chance(copies) == 0 ? 0 : 1;
            seen[copies] *= shows[shown.metBy(copies) ? 1 : 0];
        }
        return seen;
    }

    private static boolean flat(double[] seen) {
        return seen[0] == seen[1] && seen[1] == seen[2];
    }
}
