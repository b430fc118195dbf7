package pippinry.nursery.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import pippinry.model.Program;
import pippinry.model.record.Done;
import pippinry.model.record.Kinds;
import pippinry.model.record.PollinationKind;
import pippinry.nursery.internal.round.Branch;
import pippinry.nursery.internal.round.Controls;
import pippinry.nursery.internal.round.LossesByCause;
import pippinry.nursery.internal.round.Pace;
import pippinry.nursery.internal.round.RoundChecks;
import pippinry.nursery.internal.round.WorkableHours;
import pippinry.nursery.internal.work.Terms;
import pippinry.panels.Chapter;
import pippinry.panels.Page;

/** The book's chapter on the pollination round: single passes, controls, losses, and how much a day can hold. */
@Component
public final class RoundChapter implements Chapter {

    private static final int DAYS_AROUND = 7;
    private static final int CAUSES = 12;

    @Activate
    public RoundChapter() {}

    @Override
    public int order() {
        return 25;
    }

    @Override
    public String title() {
        return "The pollination round";
    }

    @Override
    public void write(Program program, LocalDate today, Page page) {
        if (program.table(Kinds.POLLINATIONS).size() == 0) {
            return;
        }
        int year = lastYear(program, today);
        page.paragraph("The last round on file is that of " + year + ".");
        branches(program, today, year, page);
        day(program, page);
        controls(program, page);
        losses(program, page);
    }

    private static int lastYear(Program program, LocalDate today) {
        return program.table(Kinds.VISITS).stream()
                .flatMap(visit -> visit.time().flatMap(time -> time.day()).stream())
                .filter(day -> !day.isAfter(today))
                .mapToInt(LocalDate::getYear)
                .max()
                .orElse(today.getYear());
    }

    private static void branches(Program program, LocalDate today, int year, Page page) {
        List<Branch> once = RoundChecks.onePass(program, year);
        page.heading("Branches that got one pass");
        page.paragraph(once.isEmpty() ? "None in " + year + "." : list(once));
        long bagsOff = Terms.usual().get("bags-off").latest();
        List<Branch> unseen = RoundChecks.notSeenSincePetalFall(program, year, today, bagsOff);
        if (!unseen.isEmpty()) {
            page.heading("Not seen since petal fall");
            page.paragraph(list(unseen));
        }
    }

    private static String list(List<Branch> branches) {
        return branches.stream().map(branch -> branch.tag().tag().text()).collect(Collectors.joining(", "));
    }

    private static void day(Program program, Page page) {
        List<Pace> paces = Pace.of(program);
        if (paces.isEmpty()) {
            return;
        }
        page.heading("What a day can hold");
        page.table(
                List.of("Hand", "Flowers an hour", "Rounds"),
                paces.stream()
                        .map(pace -> List.of(
                                pace.hand().isBlank() ? "not written down" : pace.hand(),
                                Long.toString(Math.round(pace.flowersAnHour())),
                                Integer.toString(pace.rounds())))
                        .toList());
        OptionalDouble hours = lastPollen(program)
                .map(day -> WorkableHours.of(program).around(day, DAYS_AROUND))
                .orElse(OptionalDouble.empty());
        double fastest = paces.stream().mapToDouble(Pace::flowersAnHour).max().orElse(0);
        page.paragraph("Flowers an hour: the middle of the rounds of at least three branches, by their own times."
                + (hours.isPresent()
                        ? String.format(
                                Locale.ENGLISH,
                                " A day around bloom here has %.1f workable hours (8 to 19 o'clock, dry, 12 °C or more), so one"
                                        + " hand can do about %d flowers on it.",
                                hours.getAsDouble(),
                                Math.round(hours.getAsDouble() * fastest))
                        : " Without weather on file the workable hours of a day are not known."));
    }

    /** The last day on which pollen was brought. */
    private static Optional<LocalDate> lastPollen(Program program) {
        return program.table(Kinds.VISITS).stream()
                .filter(visit ->
                        visit.did().filter(did -> did == Done.POLLINATED).isPresent())
                .flatMap(visit -> visit.time().flatMap(time -> time.day()).stream())
                .max(LocalDate::compareTo);
    }

    private static void controls(Program program, Page page) {
        List<Controls.Control> controls = Controls.of(program);
        if (!controls.isEmpty()) {
            page.heading("What the controls say");
            page.paragraph(
                    "A bag without pollen that sets says that the tree fertilises itself, or that pollen got in; an open"
                            + " branch that sets none says that the tree could not set that year.");
            page.table(
                    List.of("Tree", "Control", "Branches", "Flowers", "Set", "Share", "95 % limits"),
                    controls.stream().map(RoundChapter::row).toList());
        }
    }

    private static List<String> row(Controls.Control control) {
        return List.of(
                control.tree(),
                control.kind() == PollinationKind.CONTROL_OPEN ? "open" : "bagged, no pollen",
                Integer.toString(control.branches()),
                Integer.toString(control.flowers()),
                Integer.toString(control.set()),
                percent(control.share()),
                percent(control.limits().low()) + " to "
                        + percent(control.limits().high()));
    }

    private static void losses(Program program, Page page) {
        List<LossesByCause.Cause> causes = LossesByCause.of(program);
        if (!causes.isEmpty()) {
            page.heading("Losses by cause");
            page.table(
                    List.of("Cause", "Flowers and fruits", "Seeds and seedlings", "Others", "All"),
                    causes.stream()
                            .limit(CAUSES)
                            .map(cause -> List.of(
                                    cause.cause(),
                                    Integer.toString(cause.branches()),
                                    Integer.toString(cause.lots()),
                                    Integer.toString(cause.others()),
                                    Integer.toString(cause.all())))
                            .toList());
        }
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }
}
