package pippinry.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.NeverGiven;
import pippinry.model.value.Code;

/**
 * The numbers to give out next in a program. None is given twice, and none whose check character would be a star;
 * those are skipped and stand on file as never given.
 */
public final class NextNumbers {

    private static final int YEARS = 100;

    private final Program program;

    public NextNumbers(Program program) {
        this.program = program;
    }

    /**
     * Numbers given out together.
     *
     * @param numbers as many as were asked for
     * @param skipped those passed over because of a star
     */
    public record Given(List<String> numbers, List<String> skipped) {

        public Given {
            numbers = List.copyOf(numbers);
            skipped = List.copyOf(skipped);
        }

        /** Puts the skipped ones on file. */
        public Edit.Draft markSkipped(Edit.Draft edit) {
            skipped.forEach(number ->
                    edit.put(Kinds.NEVERGIVEN, new NeverGiven(Code.of(number), "its check character would be a star")));
            return edit;
        }
    }

    /** The next cross of a year, such as {@code 26-014}. */
    public String cross(int year) {
        String prefix = "%02d-".formatted(Math.floorMod(year, YEARS));
        int next = 1 + Math.max(highest(Kinds.CROSSES, prefix, ""), highest(Kinds.GENOTYPES, prefix, "-\\d+"));
        return prefix + "%03d".formatted(next);
    }

    /** The next seedlings of a cross or family; neither the number nor its copy A has a star. */
    public Given seedlings(String cross, int count) {
        int last = Math.max(highest(Kinds.GENOTYPES, cross + "-", ""), highest(Kinds.NEVERGIVEN, cross + "-", ""));
        return give(
                last,
                count,
                serial -> cross + "-%03d".formatted(serial),
                number -> isFree(number) && isFree(number + "A"));
    }

    /** The next tagged branches of a cross, such as {@code 26-014/3}. */
    public Given pollinations(String cross, int count) {
        int last = Math.max(highest(Kinds.POLLINATIONS, cross + "/", ""), highest(Kinds.NEVERGIVEN, cross + "/", ""));
        return give(last, count, serial -> cross + "/" + serial, NextNumbers::isFree);
    }

    /** The next tags that are printed before the cross is known, such as {@code T-0417}. */
    public Given neutral(int count) {
        int last = Math.max(highest(Kinds.POLLINATIONS, "T-", ""), highest(Kinds.NEVERGIVEN, "T-", ""));
        return give(last, count, "T-%04d"::formatted, NextNumbers::isFree);
    }

    /** The next copy of a genotype: its number and the next letter that is free, from B on, for A is the own-root seedling. */
    public String copy(String genotype) {
        for (char letter = 'B'; letter <= 'Z'; letter++) {
            if (isNewCopy(genotype + letter)) {
                return genotype + letter;
            }
        }
        for (int serial = 2; ; serial++) {
            if (isNewCopy(genotype + "Z" + serial)) {
                return genotype + "Z" + serial;
            }
        }
    }

    private boolean isNewCopy(String tag) {
        return isFree(tag)
                && program.table(Kinds.PLANTS).find(tag).isEmpty()
                && program.table(Kinds.GENOTYPES).find(tag).isEmpty();
    }

    private interface Test {
        boolean on(String number);
    }

    private static Given give(int last, int count, IntFunction<String> number, Test free) {
        List<String> given = new ArrayList<>();
        List<String> skipped = new ArrayList<>();
        for (int serial = last + 1; given.size() < count; serial++) {
            String next = number.apply(serial);
            (free.on(next) ? given : skipped).add(next);
        }
        return new Given(given, skipped);
    }

    private static boolean isFree(String number) {
        return CheckCharacter.of(number) != CheckCharacter.STAR;
    }

    /** The highest serial that stands right after the prefix; 0 if there is none. */
    private int highest(Kind<?> kind, String prefix, String after) {
        Pattern form = Pattern.compile(Pattern.quote(prefix) + "(\\d{1,9})" + after);
        return keys(kind)
                .map(form::matcher)
                .filter(Matcher::matches)
                .mapToInt(found -> Integer.parseInt(found.group(1)))
                .max()
                .orElse(0);
    }

    private <T extends Record> java.util.stream.Stream<String> keys(Kind<T> kind) {
        return program.table(kind).stream().map(row -> kind.keyOf(row).orElseThrow());
    }
}
