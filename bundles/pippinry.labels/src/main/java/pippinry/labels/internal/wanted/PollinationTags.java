package pippinry.labels.internal.wanted;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Cross;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.record.PollinationKind;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;

/**
 * Tags for the branches of a year's crosses. A cross that has no branch on file yet gets as many as its flowers ask for, so
 * that the tags can be taken to the tree.
 */
final class PollinationTags implements TagSource {
    @Override
    public WantedTags wanted(Wish wish) {
        List<Tag> tags = new ArrayList<>();
        List<Pollination> given = new ArrayList<>();
        crosses(wish).forEach(cross -> addBranches(wish, cross, tags, given));
        wish.program().table(Kinds.POLLINATIONS).stream()
                .filter(pollination -> pollination.cross().isEmpty()
                        && wish.names(pollination.tag().text()))
                .forEach(pollination ->
                        tags.add(NeutralTags.tag(pollination.tag().text())));
        return new WantedTags(tags, given);
    }

    private static List<Cross> crosses(Wish wish) {
        return wish.program().table(Kinds.CROSSES).stream()
                .filter(cross -> wish.cross().map(cross.code().text()::equals).orElse(true))
                .filter(cross -> !wish.isOpen() || wish.cross().isPresent() || isOf(cross, wish.yearOrThis()))
                .sorted(Comparator.comparing(cross -> cross.code().text(), NaturalOrder.BY_NUMBER))
                .toList();
    }

    static boolean isOf(Cross cross, int year) {
        return cross.year().map(date -> date.year().getValue() == year).orElse(false);
    }

    private static void addBranches(Wish wish, Cross cross, List<Tag> tags, List<Pollination> given) {
        List<Pollination> branches = branches(wish.program(), cross);
        branches.stream()
                .filter(branch -> wish.isOpen() || wish.names(branch.tag().text()))
                .forEach(branch -> tags.add(tag(wish.program(), branch, cross)));
        if (branches.isEmpty() && wish.isOpen()) {
            int wanted = new BranchesNeeded(wish).of(cross);
            planned(cross, wanted).forEach(branch -> {
                given.add(branch);
                tags.add(tag(wish.program(), branch, cross));
            });
        }
    }

    static List<Pollination> branches(Program program, Cross cross) {
        return program.table(Kinds.POLLINATIONS).citing(cross.code().text()).stream()
                .map(Row::value)
                .filter(branch -> branch.cross().equals(Optional.of(cross.code())))
                .sorted(Comparator.comparing(branch -> branch.tag().text(), NaturalOrder.BY_NUMBER))
                .toList();
    }

    private static List<Pollination> planned(Cross cross, int wanted) {
        List<Pollination> planned = new ArrayList<>();
        for (int branch = 1; planned.size() < wanted; branch++) {
            String number = cross.code().text() + "/" + branch;
            if (Numbered.mayBeGiven(number)) {
                planned.add(new Pollination(
                        Code.of(number),
                        Optional.of(cross.code()),
                        Optional.empty(),
                        Optional.of(PollinationKind.HAND),
                        OptionalInt.empty(),
                        OptionalInt.empty(),
                        OptionalInt.empty(),
                        "",
                        ""));
            }
        }
        return planned;
    }

    static Tag tag(Program program, Pollination branch, Cross cross) {
        Phrases phrases = new Phrases(program);
        return Numbered.tag(
                branch.tag().text(),
                isControlWithoutPollen(branch)
                        ? phrases.parents(cross.seedParent(), PollenParent.unknown())
                        : phrases.parents(cross),
                Phrases.row(
                        Phrases.year(cross.year()),
                        what(branch),
                        branch.plant()
                                .map(plant -> Phrases.joined("on " + plant))
                                .orElse(""),
                        flowers(branch)));
    }

    private static boolean isControlWithoutPollen(Pollination branch) {
        return branch.kind().equals(Optional.of(PollinationKind.CONTROL_NO_POLLEN));
    }

    private static String what(Pollination branch) {
        return branch.kind()
                .map(kind -> switch (kind) {
                    case HAND -> "";
                    case OPEN -> Phrases.joined("open pollinated");
                    case CAGED_BEES -> Phrases.joined("caged bees");
                    case CONTROL_NO_POLLEN -> Phrases.joined("bag without pollen");
                    case CONTROL_OPEN -> Phrases.joined("open control");
                })
                .orElse("");
    }

    private static String flowers(Pollination branch) {
        return branch.flowers().isPresent() ? Phrases.joined(branch.flowers().getAsInt() + " flowers") : "";
    }
}
