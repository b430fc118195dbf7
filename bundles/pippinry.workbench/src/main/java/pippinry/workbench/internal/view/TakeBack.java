package pippinry.workbench.internal.view;

import java.awt.Dimension;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import pippinry.model.HistoryLine;
import pippinry.workbench.internal.ChangeWords;
import pippinry.workbench.internal.Session;

/** Shows what will be taken back before it is. */
final class TakeBack {

    private static final Dimension SIZE = new Dimension(520, 260);

    private TakeBack() {}

    static void ask(JFrame owner, Session session, HistoryLine line, Runnable doIt) {
        List<String> words = ChangeWords.of(session.store().changesOf(line.number()));
        JScrollPane list = new JScrollPane(new JList<>(words.toArray(String[]::new)));
        list.setPreferredSize(SIZE);
        Object[] message = {"'" + line.reason() + "' of " + line.author() + " will be taken back:", list};
        String[] answers = {"Take back", "Leave it"};
        int answer = JOptionPane.showOptionDialog(
                owner,
                message,
                "Take back",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                answers,
                answers[0]);
        if (answer == 0) {
            doIt.run();
        }
    }
}
