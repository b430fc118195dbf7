package pippinry.model.ask;

import java.util.List;
import java.util.stream.Collectors;

/** Rows of plain tables cannot be read or do not fit; nothing of them was taken in. */
public final class RowsRefused extends Exception {

    private static final long serialVersionUID = 1;
    private static final int SHOWN = 20;

    private final transient List<String> reasons;

    /** @param reasons at least one, each naming file, line, column, value and what was expected */
    public RowsRefused(List<String> reasons) {
        super(reasons.stream().limit(SHOWN).collect(Collectors.joining("\n")) + more(reasons.size()));
        this.reasons = List.copyOf(reasons);
    }

    /** All of them. */
    public List<String> reasons() {
        return reasons;
    }

    private static String more(int size) {
        return size > SHOWN ? "\nand " + (size - SHOWN) + " more" : "";
    }
}
