package pippinry.crossing.internal.allocate;

/**
 * What the plan has to keep to.
 *
 * @param places for seedlings
 * @param flowers that can be worked in the bloom window
 * @param best how many of the best seedlings the plan is for
 * @param crosses at most
 * @param leastFamily fewest seedlings of a cross that is made
 * @param mostInbreeding of the seedlings
 * @param mostOfOneParent largest share of all seedlings that may have one parent
 */
public record Limits(
        int places,
        int flowers,
        int best,
        int crosses,
        int leastFamily,
        double mostInbreeding,
        double mostOfOneParent) {

    public Limits {
        if (places < 1 || flowers < 1 || best < 1 || crosses < 1 || leastFamily < 1) {
            throw new IllegalArgumentException("Places, flowers, best, crosses and the least family are 1 or more");
        }
        if (!(mostInbreeding >= 0 && mostInbreeding <= 1 && mostOfOneParent > 0 && mostOfOneParent <= 1)) {
            throw new IllegalArgumentException("Inbreeding and the share of one parent lie between 0 and 1");
        }
    }
}
