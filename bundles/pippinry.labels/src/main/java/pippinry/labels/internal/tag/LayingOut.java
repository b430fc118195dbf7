package pippinry.labels.internal.tag;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.labels.internal.code.CodeWriter;
import pippinry.labels.internal.code.Symbology;
import pippinry.labels.internal.paper.Metrics;
import pippinry.labels.internal.sheet.SheetFormat;
import pippinry.labels.internal.sheet.SheetFormats;

/** Lays all tags of a print on their labels, alike where that is possible, or says what does not fit and what would do. */
final class LayingOut {
    private static final double STANDING_OUT = 1.25;

    private final CodeWriter writer = new CodeWriter();
    private final Metrics metrics;
    private final TagStyle style;
    private final SheetFormat format;
    private final SheetFormats onFile;

    LayingOut(Metrics metrics, TagStyle style, SheetFormat format, SheetFormats onFile) {
        this.metrics = metrics;
        this.style = style;
        this.format = format;
        this.onFile = onFile;
    }

    List<LaidTag> lay(List<Tag> tags) {
        List<PlanChoice.Coded> coded =
                tags.stream().map(tag -> coded(tag, style)).toList();
        TagLayout layout = layout(style, format);
        Optional<Plan> common = new PlanChoice(layout).best(coded);
        List<LaidTag> laid = laid(coded, common, layout);
        return laid(coded, common, layout.withNumbersUpTo(calm(laid)));
    }

    private List<LaidTag> laid(List<PlanChoice.Coded> tags, Optional<Plan> common, TagLayout layout) {
        List<LaidTag> laid = new ArrayList<>();
        for (PlanChoice.Coded one : tags) {
            laid.add(common.flatMap(plan -> layout.lay(one.tag(), one.picture(), plan))
                    .or(() -> alone(one, layout))
                    .orElseThrow(() -> refused(one.tag())));
        }
        return laid;
    }

    private static Optional<LaidTag> alone(PlanChoice.Coded one, TagLayout layout) {
        return new PlanChoice(layout).best(List.of(one)).flatMap(own -> layout.lay(one.tag(), one.picture(), own));
    }

    /** No number stands out by more than this from the one in the middle, so that a sheet looks like one. */
    private static double calm(List<LaidTag> laid) {
        double[] capHeights =
                laid.stream().mapToDouble(LaidTag::capHeight).sorted().toArray();
        return STANDING_OUT * capHeights[capHeights.length / 2] / Metrics.CAP_HEIGHT;
    }

    private PlanChoice.Coded coded(Tag tag, TagStyle as) {
        return new PlanChoice.Coded(tag, as.symbology().map(symbology -> writer.write(symbology, tag.code())));
    }

    private TagLayout layout(TagStyle as, SheetFormat on) {
        return new TagLayout(metrics, as, on.labelWidth(), on.labelHeight());
    }

    private boolean fits(Tag tag, TagStyle as, SheetFormat on) {
        return new PlanChoice(layout(as, on)).best(List.of(coded(tag, as))).isPresent();
    }

    private DoesNotFit refused(Tag tag) {
        String code = style.symbology()
                .map(Symbology::title)
                .map(title -> " with its " + title)
                .orElse("");
        return new DoesNotFit("The tag " + tag.code() + code + " does not fit on a label of " + format + ". "
                + wouldDo(tag) + otherCodes(tag));
    }

    private String wouldDo(Tag tag) {
        return onFile.all().stream()
                .sorted((a, b) -> Double.compare(a.labelArea(), b.labelArea()))
                .filter(larger -> fits(tag, style, larger))
                .findFirst()
                .map(larger -> "The smallest label that would do is " + larger + ".")
                .orElse("No label on file would do; give a roll's measures, such as roll-150x100.");
    }

    private String otherCodes(Tag tag) {
        String others = Stream.of(Symbology.values())
                .filter(other -> style.symbology().filter(mine -> mine != other).isPresent())
                .filter(other -> fits(tag, new TagStyle(Optional.of(other), style.dots(), style.readFrom()), format))
                .map(Symbology::title)
                .collect(Collectors.joining(" or a "));
        return others.isEmpty() ? "" : " On this label a " + others + " would fit.";
    }
}
