package pippinry.workbench.internal.view;

import io.github.andrewauclair.moderndocking.app.Docking;
import io.github.andrewauclair.moderndocking.app.RootDockingPanel;
import io.github.andrewauclair.moderndocking.ext.ui.DockingUI;
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

    /** Installs the look and shows the window with the panels there are. */
    public WorkbenchWindow(Session session, OwnFolder folder, List<PanelProvider> providers) {
        this.session = session;
        this.folder = folder;
        Theme theme = folder.remembered("theme")
                .filter("dark"::equals)
                .map(any -> Theme.DARK)
                .orElse(Theme.LIGHT);
        status = new StatusLine(theme.palette());
        context = new WindowContext(session, frame, status, this, theme.palette());
        header = new Header(theme.palette(), this::change, this::find, this::takeBack);
        startDocking(theme);
        docks = new Docks(frame, context, new SavedDesks(folder), firstDesk());
        docks.arrive(providers);
        header.menu(new ProgramMenu(this, theme));
        header.mark(docks.desk());
        new Keys(frame.getRootPane(), this);
        refresh();
        show();
    }

    /** The look must be there before the first component is made. */
    public static void installLook(OwnFolder folder) {
        Theme theme = folder.remembered("theme")
                .filter("dark"::equals)
                .map(any -> Theme.DARK)
                .orElse(Theme.LIGHT);
        theme.install();
    }

    private void startDocking(Theme theme) {
        Docking.initialize(frame);
        DockingUI.initialize();
        Settings.setActiveHighlighterEnabled(false);
        Settings.setTabLayoutPolicy(JTabbedPane.SCROLL_TAB_LAYOUT);
        RootDockingPanel root = new RootDockingPanel(frame);
        root.setBackground(theme.palette().ground());
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

    /** Waits until the person has closed the window; not on the event dispatch thread. */
    public void awaitClose() throws InterruptedException {
        closed.await();
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

    void reset() {
        docks.reset();
    }

    void show(String panelId) {
        docks.show(panelId);
    }

    void select(String number) {
        if (session.selection().select(number)) {
            docks.refresh();
        }
    }

    void use(Theme theme) {
        folder.remember("theme", theme == Theme.DARK ? "dark" : "light");
        status.say("The window has this look when it is opened next.");
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

    static void later(Runnable work) {
        SwingUtilities.invokeLater(work);
    }
}
