package pippinry.pedigree.internal.parentage;

import java.util.Arrays;

/**
 * What is recorded of a child's parents, and how far it is trusted before any marker is read.
 *
 * @param child the individual
 * @param seedParent {@link Marker#ANYBODY} when it is not known
 * @param seedWrong chance that somebody else is the seed parent
 * @param pollenParents the one recorded or the candidates, each once; empty when it is open or unknown
 * @param pollenWrong chance that it is none of them
 */
record Claim(int child, int seedParent, double seedWrong, int[] pollenParents, double pollenWrong) {
    Claim {
        pollenParents = pollenParents.clone();
        if (Arrays.stream(pollenParents).distinct().count() != pollenParents.length) {
            throw new IllegalArgumentException("each candidate once");
        }
    }

    boolean recordsSelfing() {
        return pollenParents.length == 1 && pollenParents[0] == seedParent;
    }
}
