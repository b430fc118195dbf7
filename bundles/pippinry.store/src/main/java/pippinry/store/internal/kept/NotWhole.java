package pippinry.store.internal.kept;

/** What the store folder holds cannot be trusted; the message says why, as the end of a sentence. */
final class NotWhole extends RuntimeException {

    private static final long serialVersionUID = 1;

    NotWhole(String why) {
        super(why);
    }
}
