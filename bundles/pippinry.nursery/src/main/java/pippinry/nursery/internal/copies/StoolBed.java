package pippinry.nursery.internal.copies;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Plant;
import pippinry.nursery.internal.work.Caution;
import pippinry.nursery.internal.work.Counted;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * The bed's two works: mounds go up when shoots are 15 cm long, in May and June, and again in July (Hoying 2015, Vegetative
 * rootstock and finished apple tree production, Cornell slides, for the length; months common practice, no source); rooted
 * shoots are stripped and graded in February and March (common practice, no source).
 */
public final class StoolBed implements WorkRule {

    @Override
    public String name() {
        return "stool-bed";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        Map<String, List<Plant>> stocks = Roster.of(look.program()).stools().stream()
                .collect(Collectors.groupingBy(StoolBed::stock, TreeMap::new, Collectors.toList()));
        return stocks.entrySet().stream()
                .flatMap(stock ->
                        look.crossYears().boxed().flatMap(year -> tasks(look, year, stock.getKey(), stock.getValue())));
    }

    private static String stock(Plant mother) {
        return mother.genotype().orElseThrow().text();
    }

    private Stream<DueTask> tasks(Look look, int year, String stock, List<Plant> mothers) {
        String bed = Counted.of(mothers.size(), "mother");
        if (year < look.hemisphere().crossYear(look.today())) {
            return Stream.empty();
        }
        return Stream.of(
                        new Work(
                                2,
                                1,
                                3,
                                31,
                                "Strip the stools of " + stock + ", count and grade the liners",
                                bed,
                                Caution.BLADES.line()),
                        new Work(
                                5,
                                25,
                                6,
                                20,
                                "Mound the stools of " + stock + " when shoots are 15 cm long",
                                bed + "; cover the lowest 10 cm",
                                Optional.empty()),
                        new Work(
                                7,
                                1,
                                7,
                                31,
                                "Mound the stools of " + stock + " again",
                                bed + "; not above 15 to 30 cm in all",
                                Optional.empty()))
                .map(work -> task(look, year, stock, mothers, work));
    }

    /** Work in the bed, with the months and days from which and until when, as in the north. */
    private record Work(
            int fromMonth, int fromDay, int toMonth, int toDay, String text, String detail, Optional<String> caution) {}

    private DueTask task(Look look, int year, String stock, List<Plant> mothers, Work work) {
        return new DueTask(
                stock,
                name(),
                look.hemisphere().day(year, work.fromMonth(), work.fromDay()),
                look.hemisphere().day(year, work.toMonth(), work.toDay()),
                work.text(),
                work.detail(),
                work.caution(),
                mothers.stream().map(mother -> mother.tag().text()).toList());
    }
}
