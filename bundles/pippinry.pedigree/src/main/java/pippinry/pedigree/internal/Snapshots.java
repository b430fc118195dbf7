package pippinry.pedigree.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import pippinry.model.Program;

/** Remembers what was worked out of the last few states of programs, so that asking again costs nothing. */
final class Snapshots<V> {
    private static final int REMEMBERED = 4;

    private final Function<Program, V> work;
    private final Map<Program, V> known = new LinkedHashMap<>(REMEMBERED, 1, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Program, V> eldest) {
            return size() > REMEMBERED;
        }
    };

    Snapshots(Function<Program, V> work) {
        this.work = work;
    }

    synchronized V of(Program program) {
        V found = known.get(program);
        if (found == null) {
            found = work.apply(program);
            known.put(program, found);
        }
        return found;
    }
}
