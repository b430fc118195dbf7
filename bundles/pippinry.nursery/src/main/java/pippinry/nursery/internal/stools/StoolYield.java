package pippinry.nursery.internal.stools;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.copies.Roster;

/**
 * What the stool bed of one stock gives. A harvest is a score {@code stool.liners} of a mother: its number of rooted shoots,
 * with the grade as the part that was scored.
 *
 * @param harvests liners in all by year, oldest first
 * @param mothersCut how many mothers were harvested in each of those years
 */
public record StoolYield(
        String stock, List<Plant> mothers, Map<Integer, Integer> harvests, Map<Integer, Integer> mothersCut) {

    public static final String TRAIT = "stool.liners";

    /** Own harvests of this many last years foretell the next. */
    private static final int YEARS = 3;

    /** From memory, not looked up: a mother's liners from its third year on, when nothing of one's own is on file. */
    private static final double PLANNED_LOW = 4;

    private static final double PLANNED_HIGH = 8;

    /** A bed is renewed when its stools get knobby, at 10 to 20 years; from memory, not looked up. */
    private static final int RENEWAL_YEARS = 10;

    /**
     * How many liners to expect.
     *
     * @param basis in words
     */
    public record Forecast(double low, double middle, double high, String basis) {}

    /** A yield for each stock that has living mothers, by name. */
    public static List<StoolYield> of(Program program) {
        Map<String, List<Plant>> stocks = Roster.of(program).stools().stream()
                .collect(Collectors.groupingBy(
                        mother -> mother.genotype().map(Code::text).orElse("unknown"),
                        TreeMap::new,
                        Collectors.toList()));
        return stocks.entrySet().stream()
                .map(stock -> of(program, stock.getKey(), stock.getValue()))
                .toList();
    }

    private static StoolYield of(Program program, String stock, List<Plant> mothers) {
        Map<Integer, Integer> harvests = new TreeMap<>();
        Map<Integer, Integer> cut = new TreeMap<>();
        for (Plant mother : mothers) {
            Map<Integer, Integer> own = harvests(program, mother);
            own.forEach((year, liners) -> {
                harvests.merge(year, liners, Integer::sum);
                cut.merge(year, 1, Integer::sum);
            });
        }
        return new StoolYield(stock, mothers, harvests, cut);
    }

    private static Map<Integer, Integer> harvests(Program program, Plant mother) {
        return program.table(Kinds.SCORES).citing(mother.tag().text()).stream()
                .map(Row::value)
                .filter(score -> score.subject().text().equals(mother.tag().text()))
                .filter(score -> score.trait().equals(TRAIT))
                .filter(score ->
                        score.value().number().isPresent() && score.date().isPresent())
                .collect(Collectors.toMap(StoolYield::year, StoolYield::liners, Integer::sum, TreeMap::new));
    }

    private static int year(Score score) {
        return score.date().orElseThrow().year().getValue();
    }

    private static int liners(Score score) {
        return (int) Math.round(score.value().number().getAsDouble());
    }

    /** Liners of a mother in a year; empty if none was harvested that year. */
    public OptionalDouble perMother(int year) {
        return harvests.containsKey(year)
                ? OptionalDouble.of((double) harvests.get(year) / mothersCut.get(year))
                : OptionalDouble.empty();
    }

    /** The next harvest of all living mothers: the range of their last years, else what is usually planned with. */
    public Forecast next() {
        double[] last = harvests.keySet().stream()
                .sorted((one, other) -> other - one)
                .limit(YEARS)
                .mapToDouble(year -> perMother(year).getAsDouble())
                .sorted()
                .toArray();
        int number = mothers.size();
        if (last.length == 0) {
            return new Forecast(
                    PLANNED_LOW * number,
                    (PLANNED_LOW + PLANNED_HIGH) / 2 * number,
                    PLANNED_HIGH * number,
                    "4 to 8 liners of a mother from its third year on (from memory, not looked up)");
        }
        double mean = java.util.Arrays.stream(last).average().orElseThrow();
        return new Forecast(
                last[0] * number,
                mean * number,
                last[last.length - 1] * number,
                "the last " + (last.length == 1 ? "harvest" : last.length + " harvests") + " of a mother");
    }

    /** Mothers planted so long ago that the bed is to be renewed soon. */
    public List<Plant> old(LocalDate today) {
        return mothers.stream()
                .filter(mother -> mother.madeOn()
                        .map(PartialDate::latest)
                        .filter(day -> day.isBefore(today.minusYears(RENEWAL_YEARS)))
                        .isPresent())
                .toList();
    }
}
