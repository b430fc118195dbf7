package pippinry.pedigree.internal.parentage;

import java.util.List;

/**
 * How the parents recorded of a child fit what was read.
 *
 * @param child the individual
 * @param against markers by which the record cannot be true if all readings are right; empty when it can
 * @param markers those at which the child and a recorded parent were read; empty when there is nothing to tell by
 * @param seedParent chance that the recorded seed parent is right
 * @param pollenParents chances of the recorded pollen parents, in their order
 * @param possible whether each of them can be, if all readings are right
 * @param selfed chance that the seed parent's own pollen did it though another was recorded
 * @param somebodyElse chance that the pollen came from none of these
 */
record Fit(
        int child,
        List<String> against,
        List<String> markers,
        double seedParent,
        double[] pollenParents,
        boolean[] possible,
        double selfed,
        double somebodyElse) {}
