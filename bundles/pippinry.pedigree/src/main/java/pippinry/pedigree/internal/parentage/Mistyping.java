package pippinry.pedigree.internal.parentage;

/**
 * The chance of a child's reading when any reading may be wrong. A wrong reading tells nothing of its own genotype: it is one
 * drawn from the population. T. C. Marshall, J. Slate, L. E. B. Kruuk and J. M. Pemberton (1998) Statistical confidence for
 * likelihood-based paternity inference in natural populations, Molecular Ecology 7:639-655, with the likelihood as corrected by
 * S. T. Kalinowski, M. L. Taper and T. C. Marshall (2007) Revising how the computer program CERVUS accommodates genotyping
 * error increases success in paternity assignment, Molecular Ecology 16:1099-1106. Assumed: errors in child and parents are
 * independent.
 */
final class Mistyping {
    private Mistyping() {}

    /** Both parents told of, each maybe {@link Marker#ANYBODY}. */
    static double fromParents(Marker marker, int child, int seedParent, int pollenParent) {
        double wrong = marker.errorRate();
        double seedWrong = wrongly(marker, seedParent);
        double pollenWrong = wrongly(marker, pollenParent);
        double right = (1 - seedWrong) * (1 - pollenWrong) * marker.fromParents(child, seedParent, pollenParent);
        if (seedWrong > 0) {
            right += seedWrong * (1 - pollenWrong) * marker.fromParents(child, Marker.ANYBODY, pollenParent);
        }
        if (pollenWrong > 0) {
            right += (1 - seedWrong) * pollenWrong * marker.fromParents(child, seedParent, Marker.ANYBODY);
        }
        if (seedWrong > 0 && pollenWrong > 0) right += seedWrong * pollenWrong * marker.inPopulation(child);
        return (1 - wrong) * right + wrong * marker.inPopulation(child);
    }

    static double fromSelfing(Marker marker, int child, int parent) {
        double wrong = marker.errorRate();
        double parentWrong = wrongly(marker, parent);
        double right = (1 - parentWrong) * marker.fromSelfing(child, parent);
        if (parentWrong > 0) right += parentWrong * marker.inPopulation(child);
        return (1 - wrong) * right + wrong * marker.inPopulation(child);
    }

    private static double wrongly(Marker marker, int who) {
        return who == Marker.ANYBODY || !marker.read(who) ? 0 : marker.errorRate();
    }
}
