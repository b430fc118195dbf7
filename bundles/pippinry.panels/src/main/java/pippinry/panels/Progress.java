package pippinry.panels;

/** How far long work is. */
public interface Progress {

    /** @param done share of the work, from 0 to 1; throws {@link java.util.concurrent.CancellationException} if stopped */
    void at(double done, String what);
}
