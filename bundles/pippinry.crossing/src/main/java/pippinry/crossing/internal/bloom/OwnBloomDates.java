package pippinry.crossing.internal.bloom;

import java.time.LocalDate;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import pippinry.model.Program;
import pippinry.model.ask.BloomDates;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/** Offers the bloom dates of the program's own scores to the other modules. */
@Component
public final class OwnBloomDates implements BloomDates {

    @Override
    public Optional<Interval> gapDays(Program program, Code<Genotype> one, Code<Genotype> other) {
        return BloomFit.of(program).gapDays(one, other);
    }

    @Override
    public Optional<LocalDate> expected(Program program, Code<Genotype> genotype, int year) {
        return BloomFit.of(program).expected(genotype, year);
    }
}
