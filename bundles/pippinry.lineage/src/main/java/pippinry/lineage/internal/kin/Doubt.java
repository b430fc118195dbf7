package pippinry.lineage.internal.kin;

import java.util.Optional;
import pippinry.model.record.Certainty;

/** How sure a link to a parent is, the surest first. */
public enum Doubt {
    SURE(""),
    LIKELY("likely"),
    DOUBTFUL("doubtful"),
    ONE_OF_SEVERAL("one of several"),
    IMPOSSIBLE("impossible by what was read");

    private final String words;

    Doubt(String words) {
        this.words = words;
    }

    /** Empty for a link that is sure. */
    public String words() {
        return words;
    }

    /** A link whose certainty was never written down counts as sure. */
    static Doubt of(Optional<Certainty> written) {
        return written.map(certainty -> switch (certainty) {
                    case SURE -> SURE;
                    case LIKELY -> LIKELY;
                    case DOUBTFUL -> DOUBTFUL;
                })
                .orElse(SURE);
    }

    Doubt orWorse(Doubt other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
