package pippinry.workbench.internal.view;

import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.KeyStroke;
import pippinry.panels.PanelProvider.Desk;
import pippinry.workbench.internal.Desks;

/** The keys that work everywhere in the window. */
final class Keys {

    private final JRootPane root;

    Keys(JRootPane root, WorkbenchWindow window) {
        this.root = root;
        int command = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
        bind(KeyEvent.VK_K, command, window::find);
        bind(KeyEvent.VK_Z, command, window::takeBack);
        bind(KeyEvent.VK_Y, command, window::bringAgain);
        bind(KeyEvent.VK_Z, command | InputEvent.SHIFT_DOWN_MASK, window::bringAgain);
        bind(KeyEvent.VK_Q, command, window::close);
        bind(KeyEvent.VK_F6, 0, () -> window.next(1));
        bind(KeyEvent.VK_F6, InputEvent.SHIFT_DOWN_MASK, () -> window.next(-1));
        for (Desk desk : Desks.ALL) {
            bind(KeyEvent.VK_1 + desk.ordinal(), command, () -> window.change(desk));
        }
    }

    private void bind(int key, int modifiers, Runnable work) {
        KeyStroke stroke = KeyStroke.getKeyStroke(key, modifiers);
        root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(stroke, stroke.toString());
        root.getActionMap().put(stroke.toString(), new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        });
    }
}
