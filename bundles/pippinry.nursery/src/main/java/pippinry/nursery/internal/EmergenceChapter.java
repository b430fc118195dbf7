package pippinry.nursery.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.nursery.internal.emergence.EmergencePicture;
import pippinry.nursery.internal.emergence.LotEmergence;
import pippinry.panels.Chapter;
import pippinry.panels.Page;

/** The book's chapter on how sown lots came up. */
@Component
public final class EmergenceChapter implements Chapter {

    private static final int DRAWN = 8;
    private static final int DRAWN_YEARS = 3;
    private static final double ASPECT = 0.42;

    @Activate
    public EmergenceChapter() {}

    @Override
    public int order() {
        return 35;
    }

    @Override
    public String title() {
        return "How seed came up";
    }

    @Override
    public void write(Program program, LocalDate today, Page page) {
        List<LotEmergence> lots = program.table(Kinds.SEEDLOTS).stream()
                .flatMap(lot -> LotEmergence.of(program, lot).stream())
                .sorted(Comparator.comparing(LotEmergence::sownOn).reversed().thenComparing(lot -> lot.lot()
                        .code()))
                .toList();
        if (lots.isEmpty()) {
            return;
        }
        List<LotEmergence> recent = lots.stream()
                .filter(lot -> lot.sownOn().isAfter(today.minusYears(DRAWN_YEARS)))
                .limit(DRAWN)
                .toList();
        if (!recent.isEmpty()) {
            page.picture(
                    new EmergencePicture(recent),
                    ASPECT,
                    "Share of the sown seeds that had come up, by days after sowing. Marks are counts; a line is the log-logistic"
                            + " curve with an upper limit below one (Ritz, Pipper & Streibig 2013), drawn where there are"
                            + " counts enough.");
        }
        page.table(
                List.of(
                        "Lot",
                        "Cross",
                        "Sown on",
                        "Sown",
                        "Up",
                        "Share",
                        "95 % limits",
                        "Half up after",
                        "Final share"),
                lots.stream().map(EmergenceChapter::row).toList());
        page.paragraph(
                "Share and limits are those of the last count (Wilson 1927); the final share is what the curve expects in"
                        + " the end, with its 95 % limits. Half up after: days from sowing until half of those that come up stand.");
    }

    private static List<String> row(LotEmergence lot) {
        List<String> row = new ArrayList<>();
        row.add(lot.lot().code().text());
        row.add(lot.lot().cross().map(Code::text).orElse(""));
        row.add(lot.sownOn().toString());
        row.add(Integer.toString(lot.counting().sown()));
        row.add(Integer.toString(lot.counting().emerged()));
        row.add(percent(lot.share()));
        row.add(percent(lot.limits().low()) + " to " + percent(lot.limits().high()));
        row.add(days(lot.half()));
        row.add(lot.curve()
                .map(curve -> percent(curve.share()) + ", "
                        + percent(curve.shareLimits().low()) + " to "
                        + percent(curve.shareLimits().high()))
                .orElse(""));
        return row;
    }

    private static String days(OptionalDouble days) {
        return days.isPresent() ? String.format(Locale.ENGLISH, "%.0f days", days.getAsDouble()) : "";
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }
}
