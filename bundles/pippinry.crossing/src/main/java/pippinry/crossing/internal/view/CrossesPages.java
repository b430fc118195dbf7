package pippinry.crossing.internal.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pippinry.crossing.internal.plan.Funnel;
import pippinry.crossing.internal.rank.RankedPair;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.panels.Page;
import pippinry.panels.Palette;

/** Writes the pairs for this spring, why they stand where they stand, and how many flowers each needs. */
public final class CrossesPages {

    private static final int EXPLAINED = 3;
    private static final double FUNNEL_ASPECT = 0.3;
    private static final List<String> HEADERS = List.of(
            "Rank",
            "♀ seed parent",
            "♂ pollen parent",
            "Pollen",
            "Every must",
            "Related",
            "Bloom",
            "Seedlings",
            "Flowers");

    private final Program program;
    private final HouseRates rates;
    private final Page page;

    public CrossesPages(Program program, HouseRates rates, Page page) {
        this.program = program;
        this.rates = rates;
        this.page = page;
    }

    public void write(List<RankedPair> pairs, List<String> notes) {
        page.paragraph(
                "The best pairs of parents that are here, for the goals of the program. Share of the seedlings with every"
                        + " must that genes tell; inbreeding coefficient of the seedlings; days from the seed parent's full bloom to the"
                        + " pollen parent's by our own dates; flowers: enough with even chances, and nine times in ten.");
        page.table(HEADERS, pairs.stream().map(this::cells).toList());
        pairs.stream().limit(EXPLAINED).forEach(this::explain);
        notes.forEach(page::paragraph);
    }

    private List<String> cells(RankedPair pair) {
        List<String> cells = new ArrayList<>();
        cells.add(Integer.toString(pair.rank()));
        cells.add(name(pair.seedParent()));
        cells.add(name(pair.pollenParent()));
        cells.add(pair.compatibility().fertility().word());
        cells.add(pair.share().isPresent() ? percent(pair.share().getAsDouble()) : "not known");
        cells.add(
                pair.relationship().isPresent()
                        ? String.format(Locale.ROOT, "%.3f", pair.relationship().getAsDouble())
                        : "not known");
        cells.add(pair.bloomGapDays().map(CrossesPages::days).orElse("not known"));
        cells.add(pair.seedlings().isPresent() ? Long.toString(pair.seedlings().getAsLong()) : "");
        cells.add(pair.flowers()
                .map(flowers -> flowers.median() + " to " + flowers.high())
                .orElse("not known"));
        return cells;
    }

    private void explain(RankedPair pair) {
        page.heading(pair.rank() + ". " + name(pair.seedParent()) + " × " + name(pair.pollenParent()));
        pair.reasons().forEach(page::paragraph);
        pair.flowers().ifPresent(flowers -> {
            Optional<Double> share =
                    pair.share().isPresent() ? Optional.of(pair.share().getAsDouble()) : Optional.empty();
            Funnel funnel = Funnel.of(program, rates, pair.seedParent(), flowers.high(), share);
            FunnelPicture picture = new FunnelPicture(funnel, Palette.light());
            page.picture(picture, FUNNEL_ASPECT, picture.words() + "house rates.");
        });
    }

    private String name(Code<Genotype> code) {
        return program.find(Kinds.GENOTYPES, code)
                .map(Genotype::name)
                .filter(known -> !known.isBlank())
                .orElse(code.text());
    }

    private static String days(Interval gap) {
        long days = Math.round(gap.middle());
        return days == 0 ? "together" : Math.abs(days) + (days > 0 ? " d later" : " d earlier");
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", share * 100);
    }
}
