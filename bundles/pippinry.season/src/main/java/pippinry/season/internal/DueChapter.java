package pippinry.season.internal;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.TaskSource;
import pippinry.panels.Chapter;
import pippinry.panels.Page;
import pippinry.season.internal.due.DueBars;
import pippinry.season.internal.due.DueList;
import pippinry.season.internal.due.Entry;
import pippinry.season.internal.due.Group;
import pippinry.season.internal.due.Words;

/** The book's first chapter: what is due in the next eight weeks. */
@Component
public final class DueChapter implements Chapter {

    private static final int WEEKS = 8;

    private final List<TaskSource> sources;

    @Activate
    public DueChapter(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<TaskSource> sources) {
        this.sources = sources;
    }

    @Override
    public int order() {
        return 10;
    }

    @Override
    public String title() {
        return "What is due";
    }

    @Override
    public void write(Program program, LocalDate today, Page page) {
        DueList list = DueList.of(program, sources, today, today.plusWeeks(WEEKS));
        if (list.open().isEmpty()) {
            page.paragraph("Nothing is due until " + Words.date(list.to()) + ".");
        } else {
            DueBars bars = new DueBars(list);
            page.picture(
                    bars,
                    bars.aspect(),
                    "What can be done when, until " + Words.date(list.to())
                            + ": a bar runs from the first to the last useful day, hatched what is overdue; the line is today, "
                            + Words.date(today) + ".");
            Set<String> cautioned = new HashSet<>();
            Group.of(list).forEach(group -> write(group, today, cautioned, page));
        }
        list.missing().forEach(page::paragraph);
    }

    /** @param cautioned what was said already: each caution is said once, where the work first comes up */
    private static void write(Group group, LocalDate today, Set<String> cautioned, Page page) {
        page.heading(group.title());
        page.table(
                List.of("Batch", "What to do", "When"),
                group.entries().stream().map(entry -> row(entry, today)).toList());
        group.entries().stream()
                .flatMap(entry -> entry.task().caution().stream())
                .filter(cautioned::add)
                .forEach(page::caution);
    }

    private static List<String> row(Entry entry, LocalDate today) {
        DueTask task = entry.task();
        String what = task.detail().isBlank() ? task.text() : task.text() + "\n" + task.detail();
        return List.of(task.batch(), what, Words.when(entry, today));
    }
}
