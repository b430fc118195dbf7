package pippinry.labels.internal.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.awt.Component;
import java.awt.Container;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pippinry.labels.internal.wanted.SmallProgram;
import pippinry.model.Edit;
import pippinry.model.Outcome;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kinds;
import pippinry.panels.Palette;
import pippinry.panels.PanelContext;
import pippinry.panels.Sentences;

class EnterPanelTest {

    private final PanelContext context = mock(PanelContext.class);
    private final Map<Long, Outcome> edits = new HashMap<>();
    private Program program;
    private EnterPanel panel;

    @BeforeEach
    void open() throws Exception {
        program = SmallProgram.larkmoor()
                .row(Kinds.TRAITS, "code=girth", "unit=mm", "low=5", "high=400")
                .row(Kinds.SHEETS, "sheet=S-0001", "traits=girth", "subjects=24-003-002B|COX-A", "note=trees")
                .program();
        ProgramStore store = mock(ProgramStore.class);
        when(context.program()).thenAnswer(asked -> program);
        when(context.store()).thenReturn(store);
        when(store.now()).thenAnswer(asked -> program);
        when(context.today()).thenReturn(LocalDate.of(2026, 3, 27));
        when(context.author()).thenReturn("IN");
        when(context.palette()).thenReturn(Palette.light());
        when(context.apply(any())).thenAnswer(asked -> {
            keep(program.apply(asked.<Edit>getArgument(0), Instant.EPOCH));
            return true;
        });
        when(store.takeBack(anyLong(), any())).thenAnswer(asked -> {
            keep(program.takeBack(edits.get(asked.<Long>getArgument(0)).changes(), Instant.EPOCH));
            return null;
        });
        panel = new EnterPanel(context, List.of());
    }

    private void keep(Outcome outcome) {
        program = outcome.program();
        edits.put(program.edit(), outcome);
        panel.refresh();
    }

    private <C extends Component> List<C> all(Class<C> type) {
        List<C> found = new ArrayList<>();
        collect(panel.view(), type, found);
        return found;
    }

    private static <C extends Component> void collect(Container in, Class<C> type, List<C> found) {
        for (Component part : in.getComponents()) {
            if (type.isInstance(part)) {
                found.add(type.cast(part));
            }
            if (part instanceof Container inner) {
                collect(inner, type, found);
            }
        }
    }

    private void type(String value) {
        JTextField field = all(JTextField.class).get(1);
        field.setText(value);
        field.postActionEvent();
    }

    private String number() {
        return all(JTextField.class).get(0).getText();
    }

    private String words() {
        return String.join(
                "\n", all(Sentences.class).stream().map(Sentences::getText).toList());
    }

    private List<String> scores() {
        return program.table(Kinds.SCORES).stream()
                .map(score -> score.subject() + " " + score.value())
                .toList();
    }

    @Test
    void theNumberStandsThereAndTheNextRowComesByItself() {
        assertEquals("24-003-002B", number());
        type("41");
        assertEquals("COX-A", number());
        assertEquals(List.of("24-003-002B 41"), scores());
        assertTrue(words().contains("Entered last: 24-003-002B girth 41 mm"), words());
    }

    @Test
    void whatWasEnteredLastIsTakenBack() {
        type("41");
        panel.actions().get(1).work().run();
        assertEquals(List.of(), scores());
        assertEquals("24-003-002B", number());
    }

    @Test
    void anUnusualValueIsEnteredTwice() {
        type("900");
        assertTrue(scores().isEmpty() && words().contains("girth 900 is unusual"), words());
        type("900");
        assertEquals(List.of("24-003-002B 900"), scores());
    }

    @Test
    void anEmptyRowIsNotEntered() {
        type("");
        assertEquals("COX-A", number());
        assertEquals(List.of(), scores());
    }
}
