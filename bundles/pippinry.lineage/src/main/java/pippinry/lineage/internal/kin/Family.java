package pippinry.lineage.internal.kin;

import java.util.List;
import java.util.Optional;
import pippinry.model.record.Genotype;
import pippinry.model.record.GenotypeKind;

/**
 * Children of the same parents and of the same cross.
 *
 * @param cross number of the cross, such as {@code 21-013}; empty for those without such a number
 * @param bonds to their parents; each is as doubtful as that of the most doubtful child
 * @param children in the order of entry
 */
public record Family(String key, Optional<String> cross, List<Bond> bonds, List<Genotype> children) {

    public Family {
        bonds = List.copyOf(bonds);
        children = List.copyOf(children);
    }

    /** What so many of its children are called. */
    public String count(int number) {
        boolean seedlings = children.stream()
                .allMatch(child ->
                        child.kind().filter(GenotypeKind.SEEDLING::equals).isPresent());
        String one = seedlings ? "seedling" : "child";
        String many = seedlings ? "seedlings" : "children";
        return number + " " + (number == 1 ? one : many);
    }
}
