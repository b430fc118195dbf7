package pippinry.crossing.internal.rank;

import pippinry.model.record.GoalKind;

/**
 * The share of a cross's seedlings that has what a goal wants, as far as loci tell.
 *
 * @param goal in words
 * @param loci that speak to it, in words
 * @param share expected over what is not known of the parents
 * @param low of the cases that what is known leaves open
 * @param high of those cases
 * @param decides false when the loci only help
 */
public record GoalShare(
        String trait,
        GoalKind kind,
        String goal,
        String loci,
        double share,
        double low,
        double high,
        boolean decides) {}
