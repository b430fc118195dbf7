package pippinry.model.ask;

import java.util.Optional;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/**
 * A possible parent.
 *
 * @param parent empty for somebody who is not named
 * @param chance that it is this one, by what was read of child and parents, from 0 to 1
 * @param possible false when it cannot be if all readings are right
 */
public record ParentChance(Optional<Code<Genotype>> parent, double chance, boolean possible) {}
