package pippinry.nursery.internal.work;

/** Numbers with their nouns. */
public final class Counted {

    private Counted() {}

    /** Such as {@code 1 pot} or {@code 13 pots}. */
    public static String of(long number, String noun) {
        if (number == 1) {
            return "1 " + noun;
        }
        boolean sibilant = noun.endsWith("ch") || noun.endsWith("sh") || noun.endsWith("s");
        return number + " " + noun + (sibilant ? "es" : "s");
    }
}
