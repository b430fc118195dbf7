package pippinry.crossing.internal.rank;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import pippinry.crossing.internal.quantity.CrossQuantity;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.traits.Compatibility;

/**
 * A possible cross with all that is known of it.
 *
 * @param share of the seedlings that has every must that genes or records speak to; empty when neither does
 * @param goals each goal that loci speak to
 * @param quantities each further goal that records speak to
 * @param planned seedlings to plan flowers for; 0 when it is hopeless
 * @param relationship inbreeding coefficient of the seedlings; empty without a pedigree module
 * @param bloomGapDays from the seed parent's full bloom to the pollen parent's
 * @param seedlings needed for the share; empty when no number is enough
 * @param flowers empty when the rates do not reach from flower to seedling
 * @param beats chance that one of the planned seedlings at least beats the check asked for; empty if none is or too little known
 * @param worth by which the pairs are put in order: the product of the factors
 * @param factors each from 0 to 1, with what it stands for
 * @param rank 1 is best
 * @param reasons in sentences
 */
public record RankedPair(
        Code<Genotype> seedParent,
        Code<Genotype> pollenParent,
        Compatibility compatibility,
        OptionalDouble share,
        List<GoalShare> goals,
        List<CrossQuantity> quantities,
        OptionalDouble relationship,
        Optional<Interval> bloomGapDays,
        OptionalLong seedlings,
        int planned,
        Optional<Flowers> flowers,
        OptionalDouble beats,
        double worth,
        Map<String, Double> factors,
        int rank,
        List<String> reasons) {}
