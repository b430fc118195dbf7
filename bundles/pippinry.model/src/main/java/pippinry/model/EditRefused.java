package pippinry.model;

import java.util.List;
import java.util.stream.Collectors;

/** The edit would leave the program broken; nothing of it was applied. */
public final class EditRefused extends Exception {

    private static final long serialVersionUID = 1;
    private static final int SHOWN = 20;

    private final transient List<Fault> faults;

    public EditRefused(List<Fault> faults) {
        super(faults.stream().limit(SHOWN).map(Fault::toString).collect(Collectors.joining("\n")));
        this.faults = List.copyOf(faults);
    }

    /** All of them, at least one. */
    public List<Fault> faults() {
        return faults;
    }
}
