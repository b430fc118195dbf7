package pippinry.panels;

/**
 * Something to do in a panel.
 *
 * @param text a plain verb, such as {@code Make cross}
 * @param keys a keystroke as Swing reads it, such as {@code ctrl M}; empty for none
 * @param work runs on the event dispatch thread
 */
public record PanelAction(String text, String keys, Runnable work) {}
