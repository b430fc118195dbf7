package pippinry.labels.internal.wanted;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.Program;
import pippinry.model.record.Cross;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;

/** Tags for the nets of fruits: each carries the number of its branch. */
final class FruitBagTags implements TagSource {
    @Override
    public WantedTags wanted(Wish wish) {
        return WantedTags.of(wish.program().table(Kinds.POLLINATIONS).stream()
                .filter(branch -> wish.isOpen()
                        ? hangs(wish, branch)
                        : wish.names(branch.tag().text()))
                .sorted(Comparator.comparing(branch -> branch.tag().text(), NaturalOrder.BY_NUMBER))
                .flatMap(branch -> tags(wish.program(), branch))
                .toList());
    }

    private static boolean hangs(Wish wish, Pollination branch) {
        boolean wantedCross = wish.cross()
                .map(code -> branch.cross().filter(of -> of.text().equals(code)).isPresent())
                .orElseGet(() -> cross(wish.program(), branch)
                        .filter(cross -> PollinationTags.isOf(cross, wish.yearOrThis()))
                        .isPresent());
        return wantedCross
                && branch.harvestedFruits().isEmpty()
                && branch.setFruits().orElse(0) > 0;
    }

    private static Optional<Cross> cross(Program program, Pollination branch) {
        return branch.cross().flatMap(code -> program.find(Kinds.CROSSES, code));
    }

    private static Stream<Tag> tags(Program program, Pollination branch) {
        List<String> lines = List.of(
                new Phrases(program).parentsOfCross(branch.cross()),
                Phrases.row(
                        cross(program, branch)
                                .map(of -> Phrases.year(of.year()))
                                .orElse(""),
                        branch.plant()
                                .map(plant -> Phrases.joined("on " + plant))
                                .orElse("")));
        int fruits = Math.max(1, branch.setFruits().orElse(1));
        return IntStream.range(0, fruits)
                .mapToObj(fruit -> Numbered.tag(branch.tag().text(), lines.toArray(String[]::new)));
    }
}
