package pippinry.nursery.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates;
import pippinry.model.record.Plant;
import pippinry.model.value.Code;
import pippinry.nursery.internal.stools.LinersWanted;
import pippinry.nursery.internal.stools.StoolYield;
import pippinry.panels.Chapter;
import pippinry.panels.Page;

/** The book's chapter on the stool bed and on the liners that next spring's grafts need. */
@Component
public final class StoolChapter implements Chapter {

    private static final int YEARS = 8;

    private final Optional<HouseRates> rates;

    @Activate
    public StoolChapter(
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    HouseRates rates) {
        this.rates = Optional.ofNullable(rates);
    }

    @Override
    public int order() {
        return 55;
    }

    @Override
    public String title() {
        return "Stool bed and liners";
    }

    @Override
    public void write(Program program, LocalDate today, Page page) {
        List<StoolYield> yields = StoolYield.of(program);
        if (yields.isEmpty()) {
            return;
        }
        page.table(
                List.of("Stock", "Mothers", "Next harvest", "Range", "By"),
                yields.stream().map(StoolChapter::row).toList());
        wanted(program, yields, page);
        history(yields, page);
        old(yields, today, page);
    }

    private static List<String> row(StoolYield yield) {
        StoolYield.Forecast next = yield.next();
        return List.of(
                yield.stock(),
                Integer.toString(yield.mothers().size()),
                Long.toString(Math.round(next.middle())),
                Math.round(next.low()) + " to " + Math.round(next.high()),
                next.basis());
    }

    private void wanted(Program program, List<StoolYield> yields, Page page) {
        LinersWanted wanted = LinersWanted.of(program, rates);
        double expected =
                yields.stream().mapToDouble(yield -> yield.next().middle()).sum();
        page.heading("Liners for next spring's grafts");
        String grafts = wanted.grafts() + " grafts would be wanted: " + wanted.seedlings()
                + " potted seedlings without one, and two copies each of kept plants with a single tree ("
                + wanted.copies()
                + ").";
        if (wanted.liners().isEmpty()) {
            page.paragraph(grafts + " No graft of yours was read yet, so the take is not known.");
            return;
        }
        long liners = (long) wanted.liners().getAsDouble();
        long order = Math.max(0, liners - Math.round(expected));
        page.paragraph(String.format(
                Locale.ENGLISH,
                "%s At a take of %d %% that is %d liners; the bed should give %d, so %s. Some of these seedlings will be gone by"
                        + " then: order when the spring's losses are known.",
                grafts,
                Math.round(wanted.take().getAsDouble() * 100),
                liners,
                Math.round(expected),
                order == 0 ? "none need to be bought" : order + " would be to order"));
    }

    private static void history(List<StoolYield> yields, Page page) {
        List<List<String>> rows = new ArrayList<>();
        for (StoolYield yield : yields) {
            yield.harvests().keySet().stream()
                    .sorted((one, other) -> other - one)
                    .limit(YEARS)
                    .forEach(year -> rows.add(List.of(
                            yield.stock(),
                            Integer.toString(year),
                            Integer.toString(yield.harvests().get(year)),
                            Integer.toString(yield.mothersCut().get(year)),
                            String.format(
                                    Locale.ENGLISH,
                                    "%.1f",
                                    yield.perMother(year).getAsDouble()))));
        }
        if (!rows.isEmpty()) {
            page.heading("Harvests");
            page.table(List.of("Stock", "Year", "Liners", "Mothers cut", "Liners a mother"), rows);
        }
    }

    private static void old(List<StoolYield> yields, LocalDate today, Page page) {
        List<String> old = yields.stream()
                .flatMap(yield -> yield.old(today).stream())
                .map(Plant::tag)
                .map(Code::text)
                .toList();
        if (!old.isEmpty()) {
            page.paragraph(
                    "Planted more than ten years ago: " + String.join(", ", old)
                            + ". A bed is renewed when its stools get knobby or sick, at 10 to 20 years (from memory, not looked up).");
        }
    }
}
