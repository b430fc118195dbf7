package pippinry.crossing.internal.plan;

import java.time.LocalDate;
import java.time.Month;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.crossing.internal.rank.RankedPair;
import pippinry.model.Edit;
import pippinry.model.NextNumbers;
import pippinry.model.Program;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;

/** Writes a pair down as a cross with its number, its reason and the seedlings wanted. */
public final class MakeCross {

    private static final int MOST = 100_000;

    private MakeCross() {}

    /**
     * What it comes to.
     *
     * @param number such as {@code 26-021}
     */
    public record Plan(Edit edit, String number) {}

    public static Plan of(Program program, RankedPair pair, LocalDate today, String author) {
        String reason = pair.reasons().stream()
                .limit(2)
                .reduce((one, other) -> one + " " + other)
                .orElse("");
        OptionalInt wanted = pair.seedlings().isPresent() && pair.seedlings().getAsLong() <= MOST
                ? OptionalInt.of((int) pair.seedlings().getAsLong())
                : OptionalInt.empty();
        return of(program, pair.seedParent(), pair.pollenParent(), wanted, reason, today, author);
    }

    public static Plan of(
            Program program,
            Code<Genotype> seedParent,
            Code<Genotype> pollenParent,
            OptionalInt wanted,
            String reason,
            LocalDate today,
            String author) {
        int year = springAfter(today, program);
        String number = new NextNumbers(program).cross(year);
        Cross cross = new Cross(
                Code.of(number),
                Optional.of(PartialDate.parse("%04d".formatted(year))),
                Optional.of(seedParent),
                PollenParent.of(pollenParent),
                reason,
                wanted,
                "");
        String what = "cross " + number + ", " + seedParent + " × " + pollenParent;
        return new Plan(Edit.by(author, what).put(Kinds.CROSSES, cross).done(), number);
    }

    /** The year of the next bloom: crosses planned after midsummer are for the spring to come; half a year later in the south. */
    private static int springAfter(LocalDate today, Program program) {
        boolean south =
                program.setting("latitude").filter(text -> text.startsWith("-")).isPresent();
        Month last = south ? Month.DECEMBER : Month.JUNE;
        return today.getMonth().compareTo(last) > 0 ? today.getYear() + 1 : today.getYear();
    }
}
