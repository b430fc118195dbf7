package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;
import pippinry.model.value.Code;

/** When a tree's petals were down (BBCH 69) in a spring, as it was noted. */
final class PetalFall {

    private static final double PETALS_DOWN = 69;
    private static final int SPRING_DAYS = 45;

    private PetalFall() {}

    /** The first such note within six weeks of the day the flowers were pollinated. */
    static Optional<LocalDate> after(Program program, Code<Genotype> genotype, LocalDate pollinated) {
        return subjects(program, genotype)
                .flatMap(subject -> program.table(Kinds.SCORES).citing(subject).stream())
                .map(Row::value)
                .filter(PetalFall::saysPetalsDown)
                .flatMap(score -> score.date().flatMap(date -> date.day()).stream())
                .filter(day -> !day.isBefore(pollinated) && day.isBefore(pollinated.plusDays(SPRING_DAYS)))
                .min(Comparator.naturalOrder());
    }

    private static boolean saysPetalsDown(Score score) {
        return score.trait().equals("bbch")
                && score.value().number().isPresent()
                && score.value().number().getAsDouble() == PETALS_DOWN;
    }

    private static Stream<String> subjects(Program program, Code<Genotype> genotype) {
        Stream<String> plants = program.table(Kinds.PLANTS).citing(genotype.text()).stream()
                .map(Row::value)
                .map(Plant::tag)
                .map(Code::text);
        return Stream.concat(Stream.of(genotype.text()), plants);
    }
}
