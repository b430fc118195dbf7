package pippinry.labels.internal.tag;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pippinry.labels.internal.code.CodePicture;
import pippinry.labels.internal.paper.Box;
import pippinry.labels.internal.paper.FittedText;
import pippinry.labels.internal.paper.Metrics;
import pippinry.labels.internal.paper.TextRun;

/** Lays a tag on a label by a plan. The label's top left corner is the origin. */
final class TagLayout {
    /** Capitals lower than this are not called a number on a tag (from memory: 5 points), in mm. */
    static final double LEAST_CAP_HEIGHT = 1.3;

    static final double LARGEST_NUMBER = 16;
    private static final double SMALL_TO_NUMBER = 0.5;
    private static final double LARGEST_SMALL = 5;

    private final Metrics metrics;
    private final TagStyle style;
    private final Box label;
    private final double largestNumber;

    TagLayout(Metrics metrics, TagStyle style, double labelWidth, double labelHeight) {
        this(metrics, style, new Box(0, 0, labelWidth, labelHeight), LARGEST_NUMBER);
    }

    private TagLayout(Metrics metrics, TagStyle style, Box label, double largestNumber) {
        this.metrics = metrics;
        this.style = style;
        this.label = label;
        this.largestNumber = largestNumber;
    }

    /** The same with no number's letters larger than so many mm. */
    TagLayout withNumbersUpTo(double size) {
        return new TagLayout(metrics, style, label, Math.min(size, largestNumber));
    }

    TagStyle style() {
        return style;
    }

    Box label() {
        return label;
    }

    /** Empty when code or number find no room. */
    Optional<LaidTag> lay(Tag tag, Optional<CodePicture> picture, Plan plan) {
        CodeSize size = picture.map(code -> CodeSize.of(code, module(plan))).orElse(CodeSize.NONE);
        Rooms rooms = Rooms.of(plan.arrangement(), label, size);
        if (picture.isPresent() && !rooms.codeFits(label)) {
            return Optional.empty();
        }
        return write(tag, rooms, plan, picture.map(code -> spot(code, rooms, size, plan)));
    }

    private double module(Plan plan) {
        return style.dots().mm(plan.moduleDots());
    }

    private CodeSpot spot(CodePicture picture, Rooms rooms, CodeSize size, Plan plan) {
        double x = rooms.code().x() + size.quietBeside();
        double y = rooms.code().y() + size.quietAbove();
        return new CodeSpot(picture, x, y, plan.moduleDots(), style.dots());
    }

    private Optional<LaidTag> write(Tag tag, Rooms rooms, Plan plan, Optional<CodeSpot> code) {
        NumberLines number = NumberLines.of(tag, plan.numberLines(), metrics);
        double size = numberSize(number, rooms, plan, tag.lines().isEmpty());
        double capHeight = size * Metrics.CAP_HEIGHT;
        if (capHeight < LEAST_CAP_HEIGHT) {
            return Optional.empty();
        }
        Box smallRoom = rooms.shared() ? rooms.small().below(number.height() * size + gap(size)) : rooms.small();
        FittedText.Fitted small = small(tag, smallRoom, size);
        return Optional.of(
                new LaidTag(tag, centred(rooms, number, size, small), code, capHeight, small.size(), small.leftOff()));
    }

    private double numberSize(NumberLines number, Rooms rooms, Plan plan, boolean alone) {
        double share = rooms.shared() && !alone ? plan.numberShare() : 1;
        double height = rooms.number().height() * share;
        return Math.min(largestNumber, number.largestSize(rooms.number().width(), height));
    }

    private FittedText.Fitted small(Tag tag, Box room, double numberSize) {
        double largest = Math.min(LARGEST_SMALL, numberSize * SMALL_TO_NUMBER);
        return new FittedText(metrics, room, largest).fit(tag.lines());
    }

    private static double gap(double numberSize) {
        return 0.15 * numberSize;
    }

    /** Text of a shared room stands in its middle, as a block. */
    private List<TextRun> centred(Rooms rooms, NumberLines number, double size, FittedText.Fitted small) {
        double taken = number.height() * size + (rooms.shared() && small.size() > 0 ? gap(size) + small.height() : 0);
        double down = Math.max(0, (rooms.number().height() - taken) / 2);
        List<TextRun> runs = new ArrayList<>();
        number.runs(rooms.number(), size, metrics).forEach(run -> runs.add(run.movedBy(0, down)));
        small.runs().forEach(run -> runs.add(run.movedBy(0, rooms.shared() ? down : 0)));
        return runs;
    }
}
