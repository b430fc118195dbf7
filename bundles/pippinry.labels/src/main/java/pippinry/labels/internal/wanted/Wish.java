package pippinry.labels.internal.wanted;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates;

/**
 * For which records tags are wanted.
 *
 * @param year of the cross or harvest; empty for the year of today
 * @param numbers only these, whatever their year and state; empty for all that fit
 * @param waiting only those whose tag was never noted as printed
 * @param count how many neutral tags
 * @param flowersPerTag flowers of one tagged branch, where branches are planned
 */
public record Wish(
        Program program,
        LocalDate today,
        OptionalInt year,
        Optional<String> cross,
        Optional<String> block,
        Optional<String> row,
        List<String> numbers,
        boolean waiting,
        int count,
        int flowersPerTag,
        Optional<HouseRates> rates) {

    /** All that fits the day. */
    public static Wish of(Program program, LocalDate today) {
        return new Wish(
                program,
                today,
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                false,
                0,
                20,
                Optional.empty());
    }

    public Wish forNumbers(List<String> only) {
        return new Wish(program, today, year, cross, block, row, only, waiting, count, flowersPerTag, rates);
    }

    public Wish onlyWaiting() {
        return new Wish(program, today, year, cross, block, row, numbers, true, count, flowersPerTag, rates);
    }

    public Wish counting(int tags) {
        return new Wish(program, today, year, cross, block, row, numbers, waiting, tags, flowersPerTag, rates);
    }

    /** Only of this cross, in this block, in this row. */
    public Wish within(Optional<String> ofCross, Optional<String> inBlock, Optional<String> inRow) {
        return new Wish(program, today, year, ofCross, inBlock, inRow, numbers, waiting, count, flowersPerTag, rates);
    }

    public Wish in(OptionalInt thatYear) {
        return new Wish(program, today, thatYear, cross, block, row, numbers, waiting, count, flowersPerTag, rates);
    }

    /** Planned crosses then get as many branches as their flowers ask for. */
    public Wish with(Optional<HouseRates> known) {
        return new Wish(program, today, year, cross, block, row, numbers, waiting, count, flowersPerTag, known);
    }

    int yearOrThis() {
        return year.orElse(today.getYear());
    }

    boolean names(String number) {
        return numbers.contains(number);
    }

    /** True when no numbers are named, so that year and state decide. */
    boolean isOpen() {
        return numbers.isEmpty();
    }
}
