package pippinry.workbench.internal.view;

import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import pippinry.panels.Theme;

/** What concerns the whole window, behind the program's name. */
final class ProgramMenu extends JPopupMenu {

    private static final long serialVersionUID = 1;

    ProgramMenu(WorkbenchWindow window, Theme theme) {
        Theme other = theme == Theme.DARK ? Theme.LIGHT : Theme.DARK;
        item("Find", window::find);
        item("Take back", window::takeBack);
        item("Bring again", window::bringAgain);
        addSeparator();
        item("Tidy this desk", window::reset);
        item(other == Theme.DARK ? "Use the dark look" : "Use the light look", () -> window.use(other));
        addSeparator();
        item("Close", window::close);
    }

    private void item(String text, Runnable work) {
        JMenuItem item = new JMenuItem(text);
        item.addActionListener(event -> work.run());
        add(item);
    }
}
