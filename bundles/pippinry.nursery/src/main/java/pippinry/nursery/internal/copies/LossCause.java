package pippinry.nursery.internal.copies;

import java.time.LocalDate;
import java.util.Optional;
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
                .flatMap(
                        loss -> recent(look, loss.date())
                                .map(day -> task(loss.subject().text(), day, number(loss) + " lost"))
                                .stream());
    }

    private Stream<DueTask> plants(Look look) {
        return look.program().table(Kinds.PLANTS).stream()
                .filter(plant -> plant.cause().isBlank())
                .filter(plant -> plant.status().filter(LossCause::isLoss).isPresent())
                .flatMap(plant ->
                        recent(look, plant.endedOn())
                                .map(day -> task(plant.tag().text(), day, words(plant)))
                                .stream());
    }

    private static boolean isLoss(PlantStatus status) {
        return status == PlantStatus.DEAD || status == PlantStatus.LOST;
    }

    private static String words(Plant plant) {
        return plant.status().orElseThrow().word();
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
                "Write down why " + subject + " was lost",
                what + " on " + day + ", no cause on file",
                Optional.empty());
    }
}
