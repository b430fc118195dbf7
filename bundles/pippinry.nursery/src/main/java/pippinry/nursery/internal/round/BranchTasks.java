package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Pollination;
import pippinry.model.value.Code;
import pippinry.nursery.internal.work.Counted;
import pippinry.nursery.internal.work.Look;

/** Puts the branches of a cross that need the same work on the same day into one task. */
final class BranchTasks {

    private static final int NAMED = 12;

    /** When a branch is due. */
    record Window(LocalDate due, LocalDate until) {}

    private BranchTasks() {}

    static Map<String, List<Branch>> byBatch(Stream<Branch> branches) {
        return branches.collect(Collectors.groupingBy(BranchTasks::batch, TreeMap::new, Collectors.toList()));
    }

    /**
     * @param window empty for a branch that does not need this work
     * @param task makes the task from batch, window and branches
     */
    static Stream<DueTask> grouped(Stream<Branch> branches, Function<Branch, Optional<Window>> window, Grouped task) {
        record Due(Branch branch, Window window) {}
        Map<String, Map<Window, List<Branch>>> due = branches.flatMap(
                        branch -> window.apply(branch).map(when -> new Due(branch, when)).stream())
                .collect(Collectors.groupingBy(
                        some -> batch(some.branch()),
                        TreeMap::new,
                        Collectors.groupingBy(
                                Due::window,
                                () -> new TreeMap<>(
                                        Comparator.comparing(Window::due).thenComparing(Window::until)),
                                Collectors.mapping(Due::branch, Collectors.toList()))));
        return due.entrySet().stream().flatMap(batch -> batch.getValue().entrySet().stream()
                .map(some -> task.of(batch.getKey(), some.getKey(), some.getValue())));
    }

    /**
     * The days of a term counted from when a branch was worked on.
     *
     * @param shownDays how long after its last useful day it is still asked for; then the window is empty
     */
    static Optional<Window> after(LocalDate worked, Look look, String term, int shownDays) {
        LocalDate until = worked.plusDays(look.term(term).latest());
        return until.plusDays(shownDays).isBefore(look.today())
                ? Optional.empty()
                : Optional.of(new Window(worked.plusDays(look.term(term).days()), until));
    }

    /** Makes one task of several branches. */
    @FunctionalInterface
    interface Grouped {
        DueTask of(String batch, Window window, List<Branch> branches);
    }

    /** The cross, or the tag itself while it is bound to none. */
    static String batch(Branch branch) {
        return branch.tag().cross().map(Code::text).orElse(branch.tag().tag().text());
    }

    /** Tags with the tree they hang on, such as {@code 26-014/1 on FIE-1}. */
    static String list(List<Branch> branches) {
        String named = branches.stream()
                .limit(NAMED)
                .map(Branch::tag)
                .map(BranchTasks::tagAndTree)
                .collect(Collectors.joining(", "));
        int more = branches.size() - NAMED;
        return more > 0 ? named + " and " + more + " more" : named;
    }

    static List<String> numbers(List<Branch> branches) {
        return branches.stream().map(branch -> branch.tag().tag().text()).toList();
    }

    static String count(List<Branch> branches) {
        return Counted.of(branches.size(), "branch");
    }

    private static String tagAndTree(Pollination tag) {
        return tag.tag() + tag.plant().map(tree -> " on " + tree).orElse("");
    }

    /** The genotype of the tree the branch is on, else the cross's seed parent. */
    static Optional<Code<Genotype>> seedTree(Program program, Branch branch) {
        Optional<Code<Genotype>> tree = branch.tag()
                .plant()
                .flatMap(plant -> program.find(Kinds.PLANTS, plant))
                .flatMap(Plant::genotype);
        return tree.or(() -> branch.tag()
                .cross()
                .flatMap(cross -> program.find(Kinds.CROSSES, cross))
                .flatMap(Cross::seedParent));
    }
}
