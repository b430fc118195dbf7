package pippinry.lineage.internal.chart;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * What somebody wants to see.
 *
 * @param around code of the genotype in the middle; empty for all families of the program
 * @param up generations of ancestors
 * @param down generations of descendants
 * @param opened keys of families whose children are shown one by one
 */
public record Wish(Optional<String> around, int up, int down, Set<String> opened) {

    private static final int FARTHEST = 9;

    public Wish {
        up = Math.max(0, Math.min(FARTHEST, up));
        down = Math.max(0, Math.min(FARTHEST, down));
        opened = Set.copyOf(opened);
    }

    public Wish around(Optional<String> code) {
        return new Wish(code, up, down, opened);
    }

    public Wish withUp(int generations) {
        return new Wish(around, generations, down, opened);
    }

    public Wish withDown(int generations) {
        return new Wish(around, up, generations, opened);
    }

    /** Opens a family, or closes one that is open. */
    public Wish turning(String family) {
        Set<String> turned = new LinkedHashSet<>(opened);
        if (!turned.remove(family)) {
            turned.add(family);
        }
        return new Wish(around, up, down, turned);
    }
}
