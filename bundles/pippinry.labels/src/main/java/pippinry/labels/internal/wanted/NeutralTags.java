package pippinry.labels.internal.wanted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.value.Code;

/** Tags with the next free {@code T-} numbers, for branches whose cross is decided at the tree. */
final class NeutralTags implements TagSource {
    private static final Pattern NUMBER = Pattern.compile("T-(\\d{1,7})");

    @Override
    public WantedTags wanted(Wish wish) {
        return wish.isOpen() ? next(wish) : again(wish);
    }

    private static WantedTags next(Wish wish) {
        List<Pollination> given = new ArrayList<>();
        int number = highest(wish.program());
        while (given.size() < wish.count()) {
            String next = "T-%04d".formatted(++number);
            if (Numbered.mayBeGiven(next)) {
                given.add(unbound(next));
            }
        }
        return new WantedTags(
                given.stream().map(branch -> tag(branch.tag().text())).toList(), given);
    }

    private static WantedTags again(Wish wish) {
        return WantedTags.of(wish.numbers().stream()
                .filter(number ->
                        wish.program().table(Kinds.POLLINATIONS).find(number).isPresent())
                .map(NeutralTags::tag)
                .toList());
    }

    private static int highest(Program program) {
        return program.table(Kinds.POLLINATIONS).stream()
                .map(branch -> NUMBER.matcher(branch.tag().text()))
                .filter(Matcher::matches)
                .mapToInt(number -> Integer.parseInt(number.group(1)))
                .max()
                .orElse(0);
    }

    private static Pollination unbound(String number) {
        return new Pollination(
                Code.of(number),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                "",
                "");
    }

    /** Lines to write on with a pencil. */
    static Tag tag(String number) {
        return Numbered.tag(number, "♀ ............  × ♂ ............".replace(' ', '\u00a0'), "flowers ......");
    }
}
