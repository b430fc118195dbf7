package pippinry.workbench.internal.view;

import io.github.andrewauclair.moderndocking.DockableTabPreference;
import io.github.andrewauclair.moderndocking.app.Docking;
import io.github.andrewauclair.moderndocking.app.RootDockingPanel;
import io.github.andrewauclair.moderndocking.settings.Settings;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import pippinry.model.HistoryLine;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelProvider;
import pippinry.panels.PanelProvider.Desk;
import pippinry.panels.Theme;
import pippinry.workbench.internal.Desks;
import pippinry.workbench.internal.Findings;
import pippinry.workbench.internal.OwnFolder;
import pippinry.workbench.internal.Session;

/** The window on one program. Everything here runs on the event dispatch thread. */
public final class WorkbenchWindow {

    private static final Dimension FIRST_SIZE = new Dimension(1440, 900);
    private static final Dimension LEAST_SIZE = new Dimension(820, 560);

    private final Session session;
    private final OwnFolder folder;
    private final JFrame frame = new JFrame();
    private final CountDownLatch closed = new CountDownLatch(1);
    private final WindowContext context;
    private final StatusLine status;
    private final Header header;
    private final Docks docks;
    private boolean again;

    /** Installs the look and shows the window with the panels there are. */
    public WorkbenchWindow(Session session, OwnFolder folder, List<PanelProvider> providers) {
        this.session = session;
        this.folder = folder;
        Theme theme = theme(folder);
        status = new StatusLine(theme.palette());
        context = new WindowContext(session, frame, status, this, theme.palette());
        header = new Header(theme.palette(), this::change, this::find, this::takeBack);
        Dressing dressing = new Dressing(theme.palette());
        startDocking(dressing);
        docks = new Docks(frame, context, new SavedDesks(folder), dressing, firstDesk());
        docks.arrive(providers);
        header.menu(new ProgramMenu(this, theme));
        header.mark(docks.desk());
        new Keys(frame.getRootPane(), this);
        refresh();
        show();
    }

    /** The look must be there before the first component is made. */
    public static void installLook(OwnFolder folder) {
        theme(folder).install();
    }

    private static Theme theme(OwnFolder folder) {
        return folder.remembered("theme")
                .filter("dark"::equals)
                .map(any -> Theme.DARK)
                .orElse(Theme.LIGHT);
    }

    private void startDocking(Dressing dressing) {
        Docking.initialize(frame);
        Settings.setActiveHighlighterEnabled(false);
        Settings.setDefaultTabPreference(DockableTabPreference.TOP);
        Settings.setTabLayoutPolicy(JTabbedPane.SCROLL_TAB_LAYOUT);
        RootDockingPanel root = new RootDockingPanel(frame);
        dressing.ground(root);
        JPanel content = new JPanel(new BorderLayout());
        content.add(header, BorderLayout.NORTH);
        content.add(root, BorderLayout.CENTER);
        content.add(status, BorderLayout.SOUTH);
        frame.setContentPane(content);
        frame.setName("workbench");
    }

    private Desk firstDesk() {
        return folder.remembered("desk")
                .map(Desk::valueOf)
                .orElseGet(() -> Desks.ofMonth(session.today().getMonthValue()));
    }

    private void show() {
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                close();
            }
        });
        frame.setMinimumSize(LEAST_SIZE);
        frame.setSize(FIRST_SIZE);
        frame.setLocationByPlatform(true);
        folder.remembered("bounds").flatMap(WorkbenchWindow::bounds).ifPresent(frame::setBounds);
        frame.setVisible(true);
        later(docks::focusFirst);
        Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> tell(fault));
    }

    /** A fault in one panel is told and leaves the others alone. */
    private void tell(Throwable fault) {
        fault.printStackTrace();
        status.say("This did not work, and nothing was changed by it: " + fault);
    }

    private static Optional<Rectangle> bounds(String text) {
        String[] parts = text.split(",");
        try {
            return Optional.of(new Rectangle(
                    Integer.parseInt(parts[0]),
                    Integer.parseInt(parts[1]),
                    Integer.parseInt(parts[2]),
                    Integer.parseInt(parts[3])));
        } catch (RuntimeException e) {
            return Optional.empty();
        }
    }

    /**
     * Waits until the person has closed the window; not on the event dispatch thread.
     *
     * @return whether it is wanted again at once, with another look
     */
    public boolean awaitClose() throws InterruptedException {
        closed.await();
        return again;
    }

    public void arrive(List<PanelProvider> providers) {
        docks.arrive(providers);
    }

    public void leave(PanelProvider provider) {
        docks.leave(provider);
    }

    /** The program changed, or another day of it is looked at. */
    public void refresh() {
        String name = session.program()
                .setting("name")
                .orElse(session.store().folder().getFileName().toString());
        String back = session.lookingBack().map(day -> " as of " + day).orElse("");
        frame.setTitle(name + back + " - Pippinry");
        header.tell(
                name + back, session.store().undoable().map(HistoryLine::reason).orElse(""));
        status.say(Standing.of(session));
        docks.refresh();
    }

    void change(Desk desk) {
        docks.change(desk);
        header.mark(desk);
        folder.remember("desk", desk.name());
    }

    void retitle() {
        docks.retitle();
    }

    void reset() {
        docks.reset();
    }

    void show(String panelId) {
        docks.show(panelId);
    }

    void select(String number) {
        if (session.selection().select(number)) {
            docks.mark(number);
        }
    }

    /** Colours are given to components when they are made: the window is put up anew, where it stood. */
    void use(Theme theme) {
        folder.remember("theme", theme == Theme.DARK ? "dark" : "light");
        again = true;
        close();
    }

    void next(int step) {
        docks.next(step);
    }

    void find() {
        new Finder(frame, this::found).setVisible(true);
    }

    private List<Finder.Choice> found(String typed) {
        Stream<Finder.Choice> numbers = Findings.in(session.program()).by(typed).stream()
                .map(finding -> new Finder.Choice(finding.words(), () -> open(finding.number())));
        Stream<Finder.Choice> actions = actions().stream().filter(choice -> choice.words()
                .toLowerCase(java.util.Locale.ROOT)
                .contains(typed.strip().toLowerCase(java.util.Locale.ROOT)));
        return Stream.concat(numbers, actions).toList();
    }

    private void open(String number) {
        select(number);
        docks.show("who");
    }

    private List<Finder.Choice> actions() {
        List<Finder.Choice> choices = new ArrayList<>();
        for (PanelProvider provider : docks.providers()) {
            choices.add(new Finder.Choice("Show " + provider.title(), () -> docks.show(provider.id())));
            docks.panel(provider.id())
                    .map(Panel::actions)
                    .orElse(List.of())
                    .forEach(action -> choices.add(choice(provider, action)));
        }
        return choices;
    }

    private static Finder.Choice choice(PanelProvider provider, PanelAction action) {
        return new Finder.Choice(action.text() + "  (" + provider.title() + ")", action.work());
    }

    void takeBack() {
        session.store()
                .undoable()
                .ifPresent(line -> TakeBack.ask(
                        frame, session, line, () -> context.change(store -> store.undo(session.author()))));
    }

    void bringAgain() {
        if (session.store().redoable().isPresent()) {
            context.change(store -> store.redo(session.author()));
        }
    }

    /** Puts the window away; everything was on disk before. */
    public void close() {
        Rectangle bounds = frame.getBounds();
        folder.remember("bounds", bounds.x + "," + bounds.y + "," + bounds.width + "," + bounds.height);
        docks.save();
        docks.close();
        Docking.uninitialize();
        frame.dispose();
        closed.countDown();
    }

    JFrame frame() {
        return frame;
    }

    /** After the panels have come into the window. */
    private static void later(Runnable work) {
        SwingUtilities.invokeLater(() -> SwingUtilities.invokeLater(() -> SwingUtilities.invokeLater(work)));
    }
}
