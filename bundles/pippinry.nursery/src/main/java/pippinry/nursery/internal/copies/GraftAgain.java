package pippinry.nursery.internal.copies;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Genotype;
import pippinry.model.record.Graft;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.value.Code;
import pippinry.nursery.internal.work.Caution;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * Grafts that failed are made again in February to April of the next spring of the north, while their seedling still lives
 * and no other graft of it does (common practice, no source).
 */
public final class GraftAgain implements WorkRule {

    private static final int NAMED = 12;

    @Override
    public String name() {
        return "graft-again";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        Map<String, Map<Integer, List<Code<Genotype>>>> failed = look.program().table(Kinds.GRAFTS).stream()
                .filter(graft -> graft.result().equals("failed") && graft.date().isPresent())
                .filter(graft -> isLastSeason(look, graft))
                .flatMap(graft -> genotype(look.program(), graft).stream()
                        .filter(genotype -> hasOwnRootsOnly(look.program(), genotype))
                        .map(genotype -> Map.entry(year(look, graft), genotype)))
                .distinct()
                .collect(Collectors.groupingBy(
                        some -> Sitting.family(look.program(), some.getValue().text()),
                        TreeMap::new,
                        Collectors.groupingBy(
                                Map.Entry::getKey,
                                TreeMap::new,
                                Collectors.mapping(Map.Entry::getValue, Collectors.toList()))));
        return failed.entrySet().stream().flatMap(batch -> batch.getValue().entrySet().stream()
                .map(some -> task(look, batch.getKey(), some.getKey(), some.getValue())));
    }

    private static boolean isLastSeason(Look look, Graft graft) {
        int now = look.hemisphere().crossYear(look.today());
        return year(look, graft) == now || year(look, graft) == now - 1;
    }

    private static int year(Look look, Graft graft) {
        return look.hemisphere().crossYear(graft.date().orElseThrow().latest());
    }

    private static Optional<Code<Genotype>> genotype(Program program, Graft graft) {
        return program.find(Kinds.PLANTS, graft.plant()).flatMap(Plant::genotype);
    }

    private static boolean hasOwnRootsOnly(Program program, Code<Genotype> genotype) {
        return Roster.of(program).living(genotype).size() == 1;
    }

    private DueTask task(Look look, String batch, int failedIn, List<Code<Genotype>> genotypes) {
        LocalDate due = look.hemisphere().day(failedIn + 1, 2, 1);
        String named = genotypes.stream().limit(NAMED).map(Code::text).collect(Collectors.joining(", "));
        String more = genotypes.size() > NAMED ? " and " + (genotypes.size() - NAMED) + " more" : "";
        return new DueTask(
                batch,
                name(),
                due,
                look.hemisphere().day(failedIn + 1, 4, 30),
                "Graft again what failed of " + batch + ": " + genotypes.size(),
                named + more + "; one living plant each, wood is to be had from it",
                Caution.BLADES.line(),
                genotypes.stream().map(Code::text).toList());
    }
}
