package pippinry.statistics.proportions;

import java.util.List;

/**
 * A share of which it is not known which of several cases holds, for instance a parent that may or may not carry an
 * allele.
 *
 * @param cases weights must sum to 1 (to 1e-9)
 */
public record MixedShare(List<Case> cases) implements Share {

    /**
     * One case and how likely it is.
     *
     * @param weight probability of the case
     */
    public record Case(double weight, Share share) {
        public Case {
            if (!(weight >= 0 && weight <= 1)) {
                throw new IllegalArgumentException("The weight of a case lies between 0 and 1, not " + weight);
            }
        }
    }

    public MixedShare {
        cases = List.copyOf(cases);
        double total = cases.stream().mapToDouble(Case::weight).sum();
        if (Math.abs(total - 1) > 1e-9) {
            throw new IllegalArgumentException("The weights of the cases sum to " + total + ", not to 1");
        }
    }

    @Override
    public double mean() {
        return cases.stream().mapToDouble(c -> c.weight() * c.share().mean()).sum();
    }

    @Override
    public double fewerThan(long least, long trials) {
        return cases.stream()
                .mapToDouble(c -> c.weight() * c.share().fewerThan(least, trials))
                .sum();
    }

    @Override
    public double ceiling(long least) {
        return cases.stream()
                .mapToDouble(c -> c.weight() * c.share().ceiling(least))
                .sum();
    }
}
