package pippinry.labels.internal.tag;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import pippinry.labels.internal.paper.Box;
import pippinry.labels.internal.paper.Dots;
import pippinry.labels.internal.paper.Lettering;
import pippinry.labels.internal.paper.Paper;
import pippinry.labels.internal.paper.PrintedFile;
import pippinry.labels.internal.paper.TextRun;
import pippinry.labels.internal.sheet.SheetFormats;

/** Prints tags on sheets of labels as a PDF. The same tags, sheet and style give the same bytes. */
public final class TagPrinting {
    private static final double HAIRLINE = 0.1;
    private static final double CORNER = 2;

    /** A number a little lower than wished is no reason to worry anybody. */
    private static final double NEARLY = 0.95;

    private final SheetFormats onFile;
    private final TagStyle style;
    private final Placing placing;

    public TagPrinting(SheetFormats onFile, TagStyle style, Placing placing) {
        this.onFile = onFile;
        this.style = style;
        this.placing = placing;
    }

    /** Writes the file; {@link DoesNotFit} before a byte is written when a tag finds no room. */
    public TagsPrinted print(String title, List<Tag> tags, OutputStream out) throws IOException {
        if (tags.isEmpty()) {
            throw new IllegalArgumentException("There is no tag to print");
        }
        Lettering lettering = new Lettering();
        List<LaidTag> laid = new LayingOut(lettering, style, placing.format(), onFile).lay(tags);
        try (PrintedFile file = new PrintedFile(title, lettering)) {
            drawAll(copied(laid), file);
            int pages = file.pages();
            file.save(out);
            return printed(laid, pages, lettering);
        }
    }

    private List<LaidTag> copied(List<LaidTag> laid) {
        List<LaidTag> copied = new ArrayList<>();
        for (LaidTag tag : laid) {
            for (int copy = 0; copy < placing.copies(); copy++) {
                copied.add(tag);
            }
        }
        return copied;
    }

    private void drawAll(List<LaidTag> labels, PrintedFile file) {
        int next = 0;
        while (next < labels.size()) {
            int page = placing.page(next);
            try (Paper paper =
                    file.page(placing.format().pageWidth(), placing.format().pageHeight())) {
                for (; next < labels.size() && placing.page(next) == page; next++) {
                    draw(labels.get(next), placing.label(next), paper);
                }
            }
        }
    }

    private void draw(LaidTag laid, Box label, Paper paper) {
        drawMarks(label, paper);
        laid.code().ifPresent(spot -> drawCode(spot, label, paper));
        for (TextRun run : laid.runs()) {
            paper.text(run, label.x(), label.y());
        }
    }

    private static void drawCode(CodeSpot spot, Box label, Paper paper) {
        Dots dots = spot.dots();
        double x = dots.nearest(label.x() + spot.x());
        double y = dots.nearest(label.y() + spot.y());
        paper.code(spot.picture(), x, y, spot.module(), spot.barHeight());
    }

    private void drawMarks(Box label, Paper paper) {
        if (placing.marks() == Marks.OUTLINES) {
            paper.frame(label, HAIRLINE);
        } else if (placing.marks() == Marks.CORNERS) {
            corner(label.x(), label.y(), 1, 1, paper);
            corner(label.right(), label.y(), -1, 1, paper);
            corner(label.x(), label.bottom(), 1, -1, paper);
            corner(label.right(), label.bottom(), -1, -1, paper);
        }
    }

    private static void corner(double x, double y, int right, int down, Paper paper) {
        paper.line(x, y, x + right * CORNER, y, HAIRLINE);
        paper.line(x, y, x, y + down * CORNER, HAIRLINE);
    }

    private TagsPrinted printed(List<LaidTag> laid, int pages, Lettering lettering) {
        int labels = laid.size() * placing.copies();
        int used = (placing.start() - 1 + labels) % placing.format().count();
        return new TagsPrinted(
                laid.size(),
                labels,
                pages,
                used == 0 ? OptionalInt.empty() : OptionalInt.of(used + 1),
                laid.stream()
                        .flatMap(tag -> tag.code().stream())
                        .mapToDouble(CodeSpot::module)
                        .min(),
                laid.stream().mapToDouble(LaidTag::readableFrom).min().orElse(0),
                warnings(laid, lettering.missing()));
    }

    private List<String> warnings(List<LaidTag> laid, Set<String> missing) {
        Set<String> warnings = new LinkedHashSet<>();
        leftOff(laid).ifPresent(warnings::add);
        smallest(laid).ifPresent(warnings::add);
        missing.stream()
                .sorted()
                .forEach(sign -> warnings.add("The font has no sign '" + sign + "'; an empty box stands in its place"));
        return List.copyOf(warnings);
    }

    private Optional<String> leftOff(List<LaidTag> laid) {
        List<LaidTag> lacking =
                laid.stream().filter(tag -> !tag.leftOff().isEmpty()).toList();
        return lacking.stream()
                .findFirst()
                .map(first -> "No room on a label of " + placing.format() + " for all small text of " + lacking.size()
                        + " of " + laid.size() + " tags; " + first.tag().code() + " goes without all of '"
                        + String.join("', '", first.leftOff()) + "'");
    }

    private Optional<String> smallest(List<LaidTag> laid) {
        return laid.stream()
                .min((a, b) -> Double.compare(a.capHeight(), b.capHeight()))
                .filter(tag -> tag.readableFrom() < NEARLY * style.readFrom())
                .map(tag -> String.format(
                        Locale.ROOT,
                        "The number %s is %.1f mm high and is read from %.1f m, not from %.1f m; a larger label would do",
                        tag.tag().code(),
                        tag.capHeight(),
                        tag.readableFrom(),
                        style.readFrom()));
    }
}
