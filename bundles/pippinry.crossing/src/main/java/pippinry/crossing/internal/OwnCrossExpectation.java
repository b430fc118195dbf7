package pippinry.crossing.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.crossing.internal.genes.GeneBook;
import pippinry.crossing.internal.genes.MapFunction;
import pippinry.crossing.internal.quantity.CrossQuantity;
import pippinry.crossing.internal.quantity.QuantityBook;
import pippinry.model.Program;
import pippinry.model.ask.CrossExpectation;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;
import pippinry.traits.CropPack;

/** Tells other modules what share of a cross's seedlings should reach a goal: by genes where they tell, else by records. */
@Component
public final class OwnCrossExpectation implements CrossExpectation {

    private static final double CERTAINTY = 0.8;
    private static final int MOST_CASES = 400;

    private final Packs packs;

    @Activate
    public OwnCrossExpectation(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this.packs = new Packs(packs);
    }

    @Override
    public Interval share(
            Program program, Code<Genotype> seedParent, PollenParent<Genotype> pollenParent, String trait) {
        List<Code<Genotype>> candidates = candidates(seedParent, pollenParent);
        if (candidates.isEmpty()) {
            return new Interval(Double.NaN, 0, 1, 1);
        }
        Optional<CropPack> pack = packs.of(program);
        List<Code<Genotype>> parents = new ArrayList<>(candidates);
        parents.add(seedParent);
        GeneBook genes = new GeneBook(program, pack, MapFunction.HALDANE, Set.copyOf(parents));
        Map<Double, Double> shares = new TreeMap<>();
        for (Code<Genotype> pollen : candidates) {
            add(genes, seedParent, pollen, trait, 1.0 / candidates.size(), shares);
        }
        if (shares.isEmpty()) {
            QuantityBook quantities = new QuantityBook(program, pack);
            candidates.forEach(pollen -> add(quantities, seedParent, pollen, trait, 1.0 / candidates.size(), shares));
        }
        return shares.isEmpty() ? new Interval(Double.NaN, 0, 1, 1) : interval(shares);
    }

    private static List<Code<Genotype>> candidates(Code<Genotype> seedParent, PollenParent<Genotype> pollenParent) {
        return pollenParent.how() == PollenParent.How.SELF ? List.of(seedParent) : pollenParent.candidates();
    }

    private static void add(
            GeneBook genes,
            Code<Genotype> seed,
            Code<Genotype> pollen,
            String trait,
            double weight,
            Map<Double, Double> shares) {
        for (int i = 0; i < genes.goals().size(); i++) {
            boolean asked = genes.goals().get(i).goal().trait().equals(trait)
                    && genes.goals().get(i).decides();
            if (asked && genes.told(i, seed, pollen)) {
                int goal = i;
                genes.cases(seed, pollen, MOST_CASES)
                        .forEach((some, chance) -> shares.merge(some.of(goal), weight * chance, Double::sum));
            }
        }
    }

    /** Share with the mean of the family at its prediction and 1.28 deviations either side. */
    private static void add(
            QuantityBook quantities,
            Code<Genotype> seed,
            Code<Genotype> pollen,
            String trait,
            double weight,
            Map<Double, Double> shares) {
        for (CrossQuantity quantity : quantities.of(seed, pollen, 0)) {
            if (quantity.goal().trait().equals(trait) && quantity.share().isPresent()) {
                shares.merge(quantity.share().getAsDouble(), weight * CERTAINTY, Double::sum);
                shares.merge(quantity.shareIfMeanIs(-1.28), weight * (1 - CERTAINTY) / 2, Double::sum);
                shares.merge(quantity.shareIfMeanIs(1.28), weight * (1 - CERTAINTY) / 2, Double::sum);
            }
        }
    }

    private static Interval interval(Map<Double, Double> shares) {
        double total = shares.values().stream().mapToDouble(w -> w).sum();
        return new Interval(
                quantile(shares, 0.5 * total),
                quantile(shares, (1 - CERTAINTY) / 2 * total),
                quantile(shares, (1 + CERTAINTY) / 2 * total),
                CERTAINTY);
    }

    private static double quantile(Map<Double, Double> shares, double weight) {
        double sum = 0;
        double last = 0;
        for (Map.Entry<Double, Double> share : shares.entrySet()) {
            sum += share.getValue();
            last = share.getKey();
            if (sum >= weight - 1e-12) {
                return last;
            }
        }
        return last;
    }
}
