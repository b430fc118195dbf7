package pippinry.workbench.internal;

import java.util.Optional;

/** The number that is selected everywhere in the window. Used on the event dispatch thread. */
public final class Selection {

    private Optional<String> number = Optional.empty();

    public Optional<String> number() {
        return number;
    }

    /** @return whether another number is selected now */
    public boolean select(String next) {
        boolean changed = number.filter(next::equals).isEmpty();
        number = Optional.of(next);
        return changed;
    }
}
