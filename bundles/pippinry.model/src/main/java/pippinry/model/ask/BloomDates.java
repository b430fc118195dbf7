package pippinry.model.ask;

import java.time.LocalDate;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/** When genotypes flower here. Without it, work that hangs on bloom is dated by the crop pack's calendar. */
@ProviderType
public interface BloomDates {

    /** Days from this one's full bloom to that one's, by the program's own dates; empty if either was never seen. */
    Optional<Interval> gapDays(Program program, Code<Genotype> one, Code<Genotype> other);

    /** Full bloom (BBCH 65) to be expected in the year; empty if it was never seen here. */
    Optional<LocalDate> expected(Program program, Code<Genotype> genotype, int year);
}
