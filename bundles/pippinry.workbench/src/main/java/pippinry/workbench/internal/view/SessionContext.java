package pippinry.workbench.internal.view;

import java.time.LocalDate;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.panels.PanelContext;
import pippinry.workbench.internal.Session;

/** What every surrounding of a panel answers from the session. */
abstract class SessionContext implements PanelContext {

    protected final Session session;

    SessionContext(Session session) {
        this.session = session;
    }

    @Override
    public final Program program() {
        return session.program();
    }

    @Override
    public final ProgramStore store() {
        return session.store();
    }

    @Override
    public final LocalDate today() {
        return session.today();
    }

    @Override
    public final String author() {
        return session.author();
    }

    @Override
    public final Optional<String> selected() {
        return session.selection().number();
    }
}
