package pippinry.exchange.internal.bring;

/** What a row means is not clear; the message says why, for the person who sorts it out. */
final class Unclear extends Exception {

    private static final long serialVersionUID = 1;

    Unclear(String why) {
        super(why);
    }
}
