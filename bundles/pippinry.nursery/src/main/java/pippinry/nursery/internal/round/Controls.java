package pippinry.nursery.internal.round;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.record.PollinationKind;
import pippinry.statistics.proportions.Interval;
import pippinry.statistics.proportions.ProportionInterval;

/**
 * What the controls say. A bag without pollen that sets fruit says that the tree fertilises itself, or that the bag or the
 * work before it let pollen in; an open branch that sets none says that the tree could not set at all that year. Limits are
 * the score interval of Wilson (1927) at 95 %.
 */
public final class Controls {

    private static final double CONFIDENCE = 0.95;
    private static final List<PollinationKind> KINDS =
            List.of(PollinationKind.CONTROL_NO_POLLEN, PollinationKind.CONTROL_OPEN);

    /**
     * Controls of one tree, over all years.
     *
     * @param tree genotype of the seed tree, or the branch's cross where the tree is not known
     * @param set fruits set on the branches that were counted
     * @param flowers of those
     */
    public record Control(String tree, PollinationKind kind, int branches, int flowers, int set, Interval limits) {

        public double share() {
            return (double) set / flowers;
        }
    }

    private Controls() {}

    public static List<Control> of(Program program) {
        record Key(String tree, PollinationKind kind) {}
        Comparator<Key> order = Comparator.comparing(Key::kind).thenComparing(Key::tree);
        Map<Key, List<Pollination>> groups = program.table(Kinds.POLLINATIONS).stream()
                .filter(tag -> tag.kind().filter(KINDS::contains).isPresent())
                .filter(tag -> tag.flowers().orElse(0) > 0 && tag.setFruits().isPresent())
                .filter(tag -> tag.setFruits().getAsInt() <= tag.flowers().getAsInt())
                .collect(Collectors.groupingBy(
                        tag -> new Key(tree(program, tag), tag.kind().orElseThrow()),
                        () -> new TreeMap<>(order),
                        Collectors.toList()));
        return groups.entrySet().stream()
                .map(group -> control(group.getKey().tree(), group.getKey().kind(), group.getValue()))
                .toList();
    }

    private static String tree(Program program, Pollination tag) {
        return BranchTasks.seedTree(program, new Branch(tag, List.of()))
                .map(tree -> tree.text())
                .orElse(BranchTasks.batch(new Branch(tag, List.of())));
    }

    private static Control control(String tree, PollinationKind kind, List<Pollination> branches) {
        int flowers =
                branches.stream().mapToInt(tag -> tag.flowers().getAsInt()).sum();
        int set = branches.stream().mapToInt(tag -> tag.setFruits().getAsInt()).sum();
        return new Control(
                tree, kind, branches.size(), flowers, set, ProportionInterval.wilson(set, flowers, CONFIDENCE));
    }
}
