package pippinry.crossing.internal.bloom;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.Score;
import pippinry.model.value.Code;
import pippinry.statistics.additive.AdditiveFit;

/**
 * Bloom by genotype with the year taken out: every bbch score from 57 to 69 with a full date is the sum of genotype, year
 * and stage, fitted by least squares. So kinds that were watched in different years can be compared where other kinds join
 * the years; where nothing joins them, no gap is given.
 */
public final class BloomFit {

    private static final double CERTAINTY = 0.8;
    private static final int FIRST_STAGE = 57;
    private static final int LAST_STAGE = 69;
    private static final String FULL_BLOOM = "65";

    private final Optional<AdditiveFit> fit;
    private final Map<String, Integer> seen = new HashMap<>();

    private BloomFit(List<AdditiveFit.Observation> records) {
        records.forEach(record -> seen.merge(record.levels().get(0), 1, Integer::sum));
        fit = records.isEmpty() ? Optional.empty() : Optional.of(new AdditiveFit(3, records));
    }

    /** The fit of a program, reckoned once. */
    public static BloomFit of(Program program) {
        return program.derived(BloomFit.class, BloomFit::fitted);
    }

    /** True when no bloom was ever written down. */
    public boolean empty() {
        return fit.isEmpty();
    }

    public boolean knows(Code<Genotype> genotype) {
        return seen.containsKey(genotype.text());
    }

    /** Days from one's full bloom to the other's, with the interval in which a single year lies. */
    public Optional<Interval> gapDays(Code<Genotype> one, Code<Genotype> other) {
        return fit.flatMap(
                found -> found.difference(0, other.text(), one.text()).map(gap -> interval(found, gap, 2)));
    }

    /** Full bloom in a year; a year that was not watched counts as the mean of those that were. */
    public Optional<LocalDate> expected(Code<Genotype> genotype, int year) {
        return fit.flatMap(found -> {
            Optional<String> known = Optional.of(Integer.toString(year)).filter(level -> found.knows(1, level));
            Optional<String> stage = Optional.of(FULL_BLOOM).filter(level -> found.knows(2, level));
            return found.expected(List.of(Optional.of(genotype.text()), known, stage))
                    .map(day -> LocalDate.ofYearDay(year, 1).plusDays(Math.round(day.value()) - 1));
        });
    }

    /** Adds the error of as many further records as the figure is about. */
    private static Interval interval(AdditiveFit fit, AdditiveFit.Difference gap, int records) {
        double reach = fit.reach(gap, records, CERTAINTY);
        return new Interval(gap.value(), gap.value() - reach, gap.value() + reach, CERTAINTY);
    }

    private static BloomFit fitted(Program program) {
        List<AdditiveFit.Observation> records = new ArrayList<>();
        program.table(Kinds.SCORES).forEach(row -> {
            Score score = row.value();
            if (score.trait().equals("bbch")) {
                observation(program, score).ifPresent(records::add);
            }
        });
        return new BloomFit(records);
    }

    private static Optional<AdditiveFit.Observation> observation(Program program, Score score) {
        Optional<LocalDate> day = score.date().filter(date -> !date.about()).flatMap(date -> date.day());
        Optional<String> genotype = genotype(program, score.subject().text());
        int stage = (int) score.value().number().orElse(0);
        if (day.isEmpty() || genotype.isEmpty() || stage < FIRST_STAGE || stage > LAST_STAGE) {
            return Optional.empty();
        }
        List<String> levels = List.of(genotype.get(), Integer.toString(day.get().getYear()), Integer.toString(stage));
        return Optional.of(new AdditiveFit.Observation(levels, day.get().getDayOfYear()));
    }

    private static Optional<String> genotype(Program program, String subject) {
        Optional<Plant> plant = program.find(Kinds.PLANTS, Code.of(subject));
        if (plant.isPresent()) {
            return plant.get().genotype().map(Code::text);
        }
        return program.find(Kinds.GENOTYPES, Code.<Genotype>of(subject))
                .map(found -> found.code().text());
    }
}
