package pippinry.crossing.internal.genes;

import java.util.List;
import pippinry.model.record.Goal;

/**
 * A goal that loci of large effect speak to.
 *
 * @param needs each of which is enough; where the absence of effects is wanted, all of them
 * @param decides false when the loci only help
 */
public record GeneticGoal(Goal goal, List<Need> needs, boolean decides) {
    public GeneticGoal {
        needs = List.copyOf(needs);
    }

    /** Whether every need has to be met: no locus may show what is not wanted. */
    public boolean every() {
        return needs.stream().noneMatch(Need::shown);
    }
}
