package pippinry.nursery.internal.work;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;
import pippinry.model.value.Code;

/**
 * Full bloom to be expected by the program's own notes alone: the mean day of the season on which BBCH 65 of this genotype,
 * or of any of its plants, was noted. A plain mean; who knows the weather of the years can do better.
 */
final class BloomNotes {

    private static final double FULL_BLOOM = 65;

    private BloomNotes() {}

    /** Empty if it was never noted to the day. */
    static Optional<LocalDate> fullBloom(Program program, Code<Genotype> genotype, int crossYear) {
        Hemisphere hemisphere = Hemisphere.of(program);
        OptionalDouble day = scores(program, genotype)
                .filter(BloomNotes::saysFullBloom)
                .flatMap(score -> score.date().flatMap(date -> date.day()).stream())
                .mapToLong(date -> ChronoUnit.DAYS.between(hemisphere.day(hemisphere.crossYear(date), 1, 1), date))
                .average();
        return day.isPresent()
                ? Optional.of(hemisphere.day(crossYear, 1, 1).plusDays(Math.round(day.getAsDouble())))
                : Optional.empty();
    }

    private static Stream<Score> scores(Program program, Code<Genotype> genotype) {
        Stream<String> plants = program.table(Kinds.PLANTS).citing(genotype.text()).stream()
                .map(Row::value)
                .filter(plant -> plant.genotype().equals(Optional.of(genotype)))
                .map(Plant::tag)
                .map(Code::text);
        return Stream.concat(Stream.of(genotype.text()), plants)
                .flatMap(subject -> program.table(Kinds.SCORES).citing(subject).stream())
                .map(Row::value);
    }

    private static boolean saysFullBloom(Score score) {
        return score.trait().equals("bbch")
                && score.value().number().isPresent()
                && score.value().number().getAsDouble() == FULL_BLOOM;
    }
}
