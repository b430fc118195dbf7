package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;
import pippinry.model.value.Code;
import pippinry.nursery.internal.round.BranchTasks.Window;
import pippinry.nursery.internal.work.Caution;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * Fruit of a cross is picked when its seeds are brown, each branch in its own bag: August to November in the north
 * (yvapplebreeders.com, seedling production), and around the seed parent's own ripe days where these are on file.
 */
public final class CrossFruit implements WorkRule {

    private static final int EARLY_DAYS = 10;
    private static final int LATE_DAYS = 14;
    private static final int STILL_SHOWN_DAYS = 30;

    @Override
    public String name() {
        return "pick-cross-fruit";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return BranchTasks.grouped(
                Branch.ofSeason(look.program(), look.today()).stream()
                        .filter(branch -> !branch.isLost() && !branch.isBare()),
                branch -> Optional.of(window(look, branch)).filter(window -> !isOver(look, window)),
                this::task);
    }

    /** What is not picked a month later has fallen or was forgotten; that is the year's reckoning. */
    private static boolean isOver(Look look, Window window) {
        return window.until().plusDays(STILL_SHOWN_DAYS).isBefore(look.today());
    }

    private static Window window(Look look, Branch branch) {
        int year = look.hemisphere().crossYear(branch.first().orElseThrow());
        return BranchTasks.seedTree(look.program(), branch)
                .map(tree -> ripeDay(look.program(), tree))
                .filter(OptionalDouble::isPresent)
                .map(day -> LocalDate.ofYearDay(
                        look.hemisphere().day(year, 9, 1).getYear(), (int) Math.round(day.getAsDouble())))
                .map(ripe -> new Window(ripe.minusDays(EARLY_DAYS), ripe.plusDays(LATE_DAYS)))
                .orElseGet(() -> new Window(
                        look.hemisphere().day(year, 8, 15), look.hemisphere().day(year, 11, 1)));
    }

    /** Mean day of the year on which this genotype was ripe here. */
    private static OptionalDouble ripeDay(Program program, Code<Genotype> genotype) {
        Stream<String> plants = program.table(Kinds.PLANTS).citing(genotype.text()).stream()
                .map(Row::value)
                .map(Plant::tag)
                .map(Code::text);
        return Stream.concat(Stream.of(genotype.text()), plants)
                .flatMap(subject -> program.table(Kinds.SCORES).citing(subject).stream())
                .map(Row::value)
                .filter(score -> score.trait().equals("time.harvest"))
                .map(Score::value)
                .filter(value -> value.number().isPresent())
                .mapToDouble(value -> value.number().getAsDouble())
                .average();
    }

    private DueTask task(String batch, Window window, List<Branch> branches) {
        return new DueTask(
                batch,
                name(),
                window.due(),
                window.until(),
                "Pick the fruit of " + batch + " when its seeds are brown, one bag for each tag",
                BranchTasks.count(branches) + ": " + BranchTasks.list(branches) + "; count full and empty seeds",
                Caution.LADDERS.line(),
                BranchTasks.numbers(branches));
    }
}
