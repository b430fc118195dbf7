package pippinry.nursery.internal.work;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.stream.IntStream;
import pippinry.model.Program;
import pippinry.model.ask.BloomDates;
import pippinry.model.ask.HouseRates;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/**
 * What a rule looks at.
 *
 * @param to the last day asked for
 * @param bloom empty without a module that knows bloom
 * @param rates empty without a module that knows the house rates
 */
public record Look(
        Program program,
        LocalDate today,
        LocalDate to,
        Terms terms,
        Optional<BloomDates> bloom,
        Optional<HouseRates> rates) {

    /** Where nobody's frost is on file: by late May in the north. Common practice, no source. */
    private static final int FROST_MONTH = 5;

    private static final int FROST_DAY = 20;

    public Hemisphere hemisphere() {
        return Hemisphere.of(program);
    }

    /** Cross years whose work may fall into the days asked for. */
    public IntStream crossYears() {
        return IntStream.rangeClosed(
                hemisphere().crossYear(today) - 1, hemisphere().crossYear(to) + 1);
    }

    /** Full bloom to be expected, by who knows bloom, else by the mean of own notes; empty if it was never seen here. */
    public Optional<LocalDate> fullBloom(Code<Genotype> genotype, int crossYear) {
        int calendarYear = hemisphere().day(crossYear, 5, 1).getYear();
        return bloom.flatMap(known -> known.expected(program, genotype, calendarYear))
                .or(() -> BloomNotes.fullBloom(program, genotype, crossYear));
    }

    public LocalDate lastFrost(int crossYear) {
        return LastFrost.of(program).expected(crossYear).orElseGet(() -> hemisphere()
                .day(crossYear, FROST_MONTH, FROST_DAY));
    }

    /** Whether the day lies at most so many days back, or ahead. */
    public boolean isRecent(LocalDate day, long days) {
        return ChronoUnit.DAYS.between(day, today) <= days;
    }

    public Term term(String name) {
        return terms.get(name);
    }
}
