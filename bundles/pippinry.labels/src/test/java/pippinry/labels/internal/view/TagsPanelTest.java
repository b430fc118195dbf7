package pippinry.labels.internal.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import pippinry.labels.internal.wanted.SmallProgram;
import pippinry.panels.Palette;
import pippinry.panels.PanelContext;
import pippinry.panels.Progress;

class TagsPanelTest {

    private final PanelContext context = mock(PanelContext.class);
    private final List<Runnable> waiting = new ArrayList<>();
    private boolean atOnce = true;

    @SuppressWarnings("unchecked")
    private TagsPanel panel() {
        when(context.program()).thenReturn(SmallProgram.larkmoor().program());
        when(context.today()).thenReturn(LocalDate.of(2026, 3, 27));
        when(context.palette()).thenReturn(mock(Palette.class));
        doAnswer(asked -> {
                    Function<Progress, Object> work = asked.getArgument(1);
                    Consumer<Object> show = asked.getArgument(2);
                    Runnable done = () -> show.accept(work.apply((share, at) -> {}));
                    if (atOnce) {
                        done.run();
                    } else {
                        waiting.add(done);
                    }
                    return null;
                })
                .when(context)
                .work(anyString(), any(Function.class), any(Consumer.class));
        return new TagsPanel(context, Optional.empty());
    }

    @Test
    void itTellsHowManySheetsAreNeeded() {
        TagsPanel panel = panel();
        assertEquals("3 tags on 1 sheet; the preview has true size", about(panel));
    }

    @Test
    void anAnswerToAnOlderQuestionIsDropped() {
        TagsPanel panel = panel();
        atOnce = false;
        JComboBox<?> choices = find(panel.view(), JComboBox.class).get(0);
        choices.setSelectedIndex(1);
        choices.setSelectedIndex(2);
        waiting.get(1).run();
        String newest = about(panel);
        waiting.get(0).run();
        assertEquals(newest, about(panel));
    }

    @Test
    void printingRunsTheCommandWithWhatIsChosen() {
        when(context.chooseFile(anyString(), anyString())).thenReturn(Optional.of(Path.of("tags.pdf")));
        panel().actions().get(0).work().run();
        verify(context)
                .run(List.of(
                        "tags",
                        "--for",
                        "pollinations",
                        "--sheet",
                        "A4-21",
                        "--code",
                        "qr",
                        "--start",
                        "1",
                        "--offset-x",
                        "0.0",
                        "--offset-y",
                        "0.0",
                        "--marks",
                        "none",
                        "--record",
                        "--out",
                        "tags.pdf"));
    }

    @Test
    void neutralTagsAreAlwaysOffered() {
        JComboBox<?> choices = find(panel().view(), JComboBox.class).get(0);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < choices.getItemCount(); i++) {
            texts.add(choices.getItemAt(i).toString());
        }
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("neutral")), texts.toString());
    }

    private static String about(TagsPanel panel) {
        return find(panel.view(), JLabel.class).stream()
                .map(JLabel::getText)
                .filter(text -> text.contains("true size"))
                .findFirst()
                .orElseThrow();
    }

    private static <C> List<C> find(java.awt.Container in, Class<C> type) {
        List<C> found = new ArrayList<>();
        for (java.awt.Component part : in.getComponents()) {
            if (type.isInstance(part)) {
                found.add(type.cast(part));
            } else if (part instanceof java.awt.Container inner) {
                found.addAll(find(inner, type));
            }
        }
        return found;
    }
}
