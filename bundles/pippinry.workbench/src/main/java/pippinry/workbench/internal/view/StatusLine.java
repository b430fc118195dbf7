package pippinry.workbench.internal.view;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GridBagLayout;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.SwingUtilities;
import javax.swing.SwingWorker;
import javax.swing.Timer;
import pippinry.panels.Palette;
import pippinry.panels.Progress;

/** The bottom of the window: what is on file, what was just done, and how far long work is, with a way to stop it. */
final class StatusLine extends JPanel {

    private static final long serialVersionUID = 1;
    private static final int UNSEEN_MILLIS = 500;
    private static final int STEPS = 1000;

    private final JLabel words = new JLabel(" ");
    private final JPanel workPart = new JPanel(new BorderLayout(8, 0));
    private final JLabel what = new JLabel();
    private final JProgressBar bar = new JProgressBar(0, STEPS);
    private final JButton stop = new JButton("Stop");
    private transient Runnable stopper = () -> {};

    StatusLine(Palette palette) {
        super(new BorderLayout());
        setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(1, 0, 0, 0, palette.line()),
                BorderFactory.createEmptyBorder(4, 16, 4, 16)));
        words.setForeground(palette.quiet());
        bar.setPreferredSize(new Dimension(160, 8));
        workPart.add(what, BorderLayout.WEST);
        JPanel middle = new JPanel(new GridBagLayout());
        middle.add(bar);
        workPart.add(middle, BorderLayout.CENTER);
        workPart.add(stop, BorderLayout.EAST);
        workPart.setVisible(false);
        stop.addActionListener(event -> stopper.run());
        add(words, BorderLayout.CENTER);
        add(workPart, BorderLayout.EAST);
    }

    void say(String text) {
        words.setText(text.isEmpty() ? " " : text.lines().findFirst().orElse(" "));
        words.setToolTipText(text.isEmpty() ? null : text);
    }

    /** Works in the background; quick work is never shown as work. */
    <V> void work(String name, Function<Progress, V> work, Consumer<V> show, Consumer<Throwable> failed) {
        AtomicBoolean stopped = new AtomicBoolean();
        Timer later = new Timer(UNSEEN_MILLIS, event -> appear(name, () -> stopped.set(true)));
        later.setRepeats(false);
        later.start();
        new SwingWorker<V, Void>() {
            @Override
            protected V doInBackground() {
                return work.apply((done, at) -> report(done, at, stopped));
            }

            @Override
            protected void done() {
                later.stop();
                workPart.setVisible(false);
                finish(this, show, failed);
            }
        }.execute();
    }

    private void appear(String name, Runnable stopping) {
        what.setText(name);
        bar.setIndeterminate(true);
        stopper = stopping;
        workPart.setVisible(true);
    }

    private void report(double done, String at, AtomicBoolean stopped) {
        if (stopped.get()) {
            throw new CancellationException(at);
        }
        SwingUtilities.invokeLater(() -> {
            bar.setIndeterminate(false);
            bar.setValue((int) Math.round(done * STEPS));
            what.setText(at);
        });
    }

    private static <V> void finish(SwingWorker<V, Void> worker, Consumer<V> show, Consumer<Throwable> failed) {
        try {
            show.accept(worker.get());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (java.util.concurrent.ExecutionException e) {
            if (!(e.getCause() instanceof CancellationException)) {
                failed.accept(e.getCause());
            }
        }
    }
}
