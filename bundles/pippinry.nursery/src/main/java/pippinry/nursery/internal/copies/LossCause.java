package pippinry.nursery.internal.copies;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Kinds;
import pippinry.model.record.Loss;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantStatus;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/** A loss without a cause, while somebody may still remember it: within a year. Older ones belong to the year's reckoning. */
public final class LossCause implements WorkRule {

    private static final int REMEMBERED_DAYS = 365;
    private static final int DAYS = 14;
    private static final int NAMED = 12;

    @Override
    public String name() {
        return "loss-cause";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return Stream.concat(losses(look), plants(look));
    }

    private Stream<DueTask> losses(Look look) {
        return look.program().table(Kinds.LOSSES).stream()
                .filter(loss -> loss.cause().isBlank())
                .flatMap(loss -> recent(look, loss.date())
                        .map(day -> task(loss.subject().text(), day, number(loss) + " lost on " + day))
                        .stream());
    }

    /** Plants of one cross make one task: whoever remembers one remembers the others. */
    private Stream<DueTask> plants(Look look) {
        Map<String, List<Plant>> families = look.program().table(Kinds.PLANTS).stream()
                .filter(plant -> plant.cause().isBlank())
                .filter(plant -> plant.status().filter(LossCause::isLoss).isPresent())
                .filter(plant -> recent(look, plant.endedOn()).isPresent())
                .collect(Collectors.groupingBy(plant -> family(look, plant), TreeMap::new, Collectors.toList()));
        return families.entrySet().stream()
                .map(family -> task(family.getKey(), ended(family.getValue()), list(family.getValue())));
    }

    private static String family(Look look, Plant plant) {
        return plant.genotype()
                .map(genotype -> Sitting.family(look.program(), genotype.text()))
                .orElse(plant.tag().text());
    }

    private static LocalDate ended(List<Plant> plants) {
        return plants.stream()
                .map(plant -> plant.endedOn().orElseThrow().latest())
                .max(LocalDate::compareTo)
                .orElseThrow();
    }

    private static String list(List<Plant> plants) {
        return plants.stream()
                        .limit(NAMED)
                        .map(plant ->
                                plant.tag() + " " + plant.status().orElseThrow().word() + " "
                                        + plant.endedOn().orElseThrow())
                        .collect(Collectors.joining(", "))
                + (plants.size() > NAMED ? " and " + (plants.size() - NAMED) + " more" : "");
    }

    private static boolean isLoss(PlantStatus status) {
        return status == PlantStatus.DEAD || status == PlantStatus.LOST;
    }

    private static String number(Loss loss) {
        return loss.number().isPresent() ? Integer.toString(loss.number().getAsInt()) : "some";
    }

    private static Optional<LocalDate> recent(Look look, Optional<PartialDate> date) {
        return date.map(PartialDate::latest).filter(day -> look.isRecent(day, REMEMBERED_DAYS));
    }

    private DueTask task(String subject, LocalDate day, String what) {
        return new DueTask(
                subject,
                name(),
                day,
                day.plusDays(DAYS),
                "Write down why there was loss in " + subject,
                "no cause on file: " + what,
                Optional.empty());
    }
}
