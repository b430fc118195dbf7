package pippinry.traits;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Published parents of a cultivar.
 *
 * @param sportOf the clone it sprang from; then it has no parents of its own here
 * @param directionKnown false when seed and pollen parent may be the other way round
 */
public record KnownParentage(
        String cultivar,
        Optional<String> seedParent,
        Optional<String> pollenParent,
        Optional<String> sportOf,
        boolean directionKnown,
        OptionalInt ploidy,
        String crossed,
        String released,
        Provenance provenance,
        String note) {}
