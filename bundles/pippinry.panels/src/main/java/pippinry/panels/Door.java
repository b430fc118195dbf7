package pippinry.panels;

import org.osgi.annotation.versioning.ConsumerType;

/**
 * A way into an empty program, offered as a service by the module that knows the first step: it asks the least that is
 * needed and leaves a person with something in hand. Later it stays at hand as an action.
 */
@ConsumerType
public interface Door {

    /** Doors stand in this order. */
    int order();

    /** As the person would say it, such as {@code I have seedlings already}. */
    String title();

    /** What it asks and what it gives, in a sentence. */
    String words();

    /** As an action in a program that is not empty any more, such as {@code Add seedlings}. */
    String later();

    /**
     * The form to fill in; called on the event dispatch thread.
     *
     * @param back closes the form
     */
    Panel open(PanelContext context, Runnable back);
}
