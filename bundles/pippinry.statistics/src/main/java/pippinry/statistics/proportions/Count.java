package pippinry.statistics.proportions;

/** Successes among trials. */
public record Count(long successes, long trials) {
    public Count {
        if (successes < 0 || successes > trials) {
            throw new IllegalArgumentException(successes + " of " + trials + " is not a count");
        }
    }
}
