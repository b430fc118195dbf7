package pippinry.nursery.internal.copies;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Decision;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Verdict;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.work.Caution;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * A kept plant with one living tree is one vole away from being lost: two or three grafts in a second place, wood cut in deep
 * rest, December to February of the north, and grafted until April (common practice, no source). Kept is what was last
 * decided to be kept, copied, advanced or used as a parent.
 */
public final class OnlyCopy implements WorkRule {

    @Override
    public String name() {
        return "only-copy";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        int year = look.hemisphere().crossYear(look.today());
        Map<String, List<Plant>> families = of(look.program())
                .collect(Collectors.groupingBy(
                        plant -> Sitting.family(look.program(), genotype(plant)), TreeMap::new, Collectors.toList()));
        return families.entrySet().stream().flatMap(family -> Stream.of(year, year + 1)
                .map(spring -> task(look, family.getKey(), family.getValue(), spring)));
    }

    private static String genotype(Plant plant) {
        return plant.genotype().orElseThrow().text();
    }

    /** The one living plant of every kept genotype that has only one. */
    public static Stream<Plant> of(Program program) {
        Roster roster = Roster.of(program);
        return kept(program).filter(code -> roster.living(code).size() == 1).map(code -> roster.living(code)
                .get(0));
    }

    private static Stream<Code<Genotype>> kept(Program program) {
        Map<Code<Genotype>, Decision> last = new HashMap<>();
        program.table(Kinds.DECISIONS).stream()
                .forEach(decision -> last.merge(decision.genotype(), decision, OnlyCopy::later));
        return last.values().stream()
                .filter(decision -> isKept(decision.decision()))
                .map(Decision::genotype)
                .sorted();
    }

    /** Of two on the same day the one entered later counts. */
    private static Decision later(Decision one, Decision other) {
        return day(other).isBefore(day(one)) ? one : other;
    }

    private static LocalDate day(Decision decision) {
        return decision.date().map(PartialDate::latest).orElse(LocalDate.MIN);
    }

    private static boolean isKept(Verdict verdict) {
        return List.of(Verdict.KEEP, Verdict.COPY, Verdict.PARENT, Verdict.ADVANCE)
                .contains(verdict);
    }

    private DueTask task(Look look, String family, List<Plant> plants, int spring) {
        String what = plants.size() == 1 ? genotype(plants.get(0)) : plants.size() + " kept plants of " + family;
        return new DueTask(
                family,
                name(),
                look.hemisphere().day(spring, 1, 1),
                look.hemisphere().day(spring, 4, 30),
                "Graft two or three copies of " + what + " in a second place",
                "only living " + (plants.size() == 1 ? "plant " : "plants ")
                        + plants.stream().map(plant -> plant.tag().text()).collect(Collectors.joining(", "))
                        + "; nothing is moved or grubbed before",
                Caution.WOOD.line(),
                plants.stream().map(plant -> plant.tag().text()).toList());
    }
}
