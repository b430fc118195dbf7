package pippinry.pedigree.internal;

import java.util.Optional;
import java.util.stream.Collectors;
import pippinry.model.record.Certainty;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;
import pippinry.pedigree.internal.kinship.LinksBetween.Side;

/** Says of a link from a genotype to a parent why it is not sure. */
final class LinkWords {
    private LinkWords() {}

    /** Empty when the link is sure. A link whose certainty was never written down counts as sure. */
    static Optional<String> doubt(Genotype child, Side side) {
        return side == Side.SEED ? seed(child) : pollen(child);
    }

    /**
     * Says that a parent is younger than its child by the years on file; empty when it is not, or may not be. A cultivar's year is
     * often that of its release, so this is a question and no proof.
     */
    static Optional<String> younger(Genotype child, Genotype parent) {
        if (child.year().isEmpty() || parent.year().isEmpty()) return Optional.empty();
        PartialDate born = child.year().get();
        PartialDate before = parent.year().get();
        if (!before.earliest().isAfter(born.latest())) return Optional.empty();
        return Optional.of("By the years on file " + parent.code() + " (" + before + ") is younger than its child "
                + child.code() + " (" + born + ")");
    }

    private static Optional<String> seed(Genotype child) {
        return written(child, child.seedLink())
                .map(why -> "The seed parent of " + child.code() + ", "
                        + child.seedParent().map(Code::text).orElse("unknown") + ", is " + why);
    }

    private static Optional<String> pollen(Genotype child) {
        String whose = "The pollen parent of " + child.code();
        PollenParent<Genotype> parent = child.pollenParent();
        Optional<String> why = written(child, child.pollenLink());
        return switch (parent.how()) {
            case CANDIDATES ->
                Optional.of(whose + " is one of " + all(parent)
                        + why.map(more -> ", " + more).orElse(""));
            case OPEN -> Optional.of(whose + " is open");
            case SELF -> why.map(more -> child.code() + " as a selfed seedling is " + more);
            default -> why.map(more -> whose + ", " + all(parent) + ", is " + more);
        };
    }

    private static String all(PollenParent<Genotype> parent) {
        return parent.candidates().stream().map(Code::text).collect(Collectors.joining(", "));
    }

    private static Optional<String> written(Genotype child, Optional<Certainty> certainty) {
        String ground = child.linkGround().isBlank() ? "" : " (" + child.linkGround() + ")";
        return certainty.filter(how -> how != Certainty.SURE).map(how -> how.word() + ground);
    }
}
