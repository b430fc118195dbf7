package pippinry.crossing.internal.rank;

import java.util.List;
import java.util.Optional;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/**
 * What the person asks of a ranking.
 *
 * @param seeds seed parents to look at; empty means all that may be
 * @param pollens pollen parents to look at; empty means all that may be
 * @param sure how sure to be of at least {@code atLeast} wanted seedlings
 * @param family seedlings to raise where the share of wanted ones is not known
 * @param limit how many pairs to show
 * @param impossibleToo whether pairs that cannot fertilise each other are shown as well
 * @param beat a check that one seedling at least should beat; empty if nobody asks
 */
public record Wishes(
        List<Code<Genotype>> seeds,
        List<Code<Genotype>> pollens,
        double sure,
        int atLeast,
        int family,
        int limit,
        boolean impossibleToo,
        Optional<Beat> beat) {

    public Wishes {
        seeds = List.copyOf(seeds);
        pollens = List.copyOf(pollens);
    }

    /** The same without a check to beat. */
    public Wishes(
            List<Code<Genotype>> seeds,
            List<Code<Genotype>> pollens,
            double sure,
            int atLeast,
            int family,
            int limit,
            boolean impossibleToo) {
        this(seeds, pollens, sure, atLeast, family, limit, impossibleToo, Optional.empty());
    }

    List<Code<Genotype>> seedParents(List<Code<Genotype>> possible) {
        return seeds.isEmpty() ? possible : seeds;
    }

    List<Code<Genotype>> pollenParents(List<Code<Genotype>> possible) {
        return pollens.isEmpty() ? possible : pollens;
    }
}
