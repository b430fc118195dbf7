package pippinry.lineage.internal.chart;

import java.util.Locale;
import pippinry.lineage.internal.kin.Bond;
import pippinry.lineage.internal.kin.Doubt;

/** A line from the card of a parent to that of a child. */
public record Link(String parent, String child, Bond bond) {

    public boolean isDoubtful() {
        return bond.doubt() != Doubt.SURE;
    }

    /** What stands on the line: nothing on one that is sure. */
    public String badge() {
        return switch (bond.doubt()) {
            case SURE -> "";
            case LIKELY, DOUBTFUL -> "?";
            case ONE_OF_SEVERAL -> String.format(Locale.ROOT, "? %.0f %%", bond.chance() * 100);
            case IMPOSSIBLE -> "×";
        };
    }
}
