package pippinry.nursery.internal.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.nursery.internal.work.Look;

/**
 * A cross that is decided on but not yet begun: no branch hangs under its number.
 *
 * @param year in which its flowers open
 */
record PlannedCross(Cross cross, int year) {

    /** After this day of the season nobody begins a cross: petals are down everywhere. */
    private static final int LAST_MONTH = 7;

    static Stream<PlannedCross> of(Look look) {
        List<Integer> years = look.crossYears().boxed().toList();
        return look.program().table(Kinds.CROSSES).stream()
                .filter(cross -> cross.year().isPresent())
                .map(cross -> new PlannedCross(
                        cross, cross.year().orElseThrow().year().getValue()))
                .filter(planned -> years.contains(planned.year()))
                .filter(planned -> look.today().isBefore(look.hemisphere().day(planned.year(), LAST_MONTH, 1)))
                .filter(planned -> !isBegun(look.program(), planned.cross()));
    }

    private static boolean isBegun(Program program, Cross cross) {
        return program.table(Kinds.POLLINATIONS).citing(cross.code().text()).stream()
                .anyMatch(row -> row.value().cross().equals(Optional.of(cross.code())));
    }

    String code() {
        return cross.code().text();
    }

    /** As the breeder says it, such as {@code 26-020 (Fiesta × Topaz)}. */
    String named(Program program) {
        String seed = cross.seedParent().map(code -> name(program, code)).orElse("unknown");
        String pollen = pollenParents().isEmpty()
                ? cross.pollenParent().how().word()
                : String.join(
                        " or ",
                        pollenParents().stream()
                                .map(code -> name(program, code))
                                .toList());
        return code() + " (" + seed + " × " + pollen + ")";
    }

    List<Code<Genotype>> pollenParents() {
        return cross.pollenParent().candidates();
    }

    /** Codes of all that may be parents. */
    List<String> parents() {
        return Stream.concat(cross.seedParent().stream(), pollenParents().stream())
                .map(Code::text)
                .toList();
    }

    /** Full bloom to be expected of the seed parent; empty if it was never seen here. */
    Optional<LocalDate> seedBloom(Look look) {
        return cross.seedParent().flatMap(parent -> look.fullBloom(parent, year));
    }

    /** Full bloom to be expected of the first pollen parent to flower. */
    Optional<LocalDate> pollenBloom(Look look) {
        return pollenParents().stream()
                .flatMap(parent -> look.fullBloom(parent, year).stream())
                .min(LocalDate::compareTo);
    }

    static String name(Program program, Code<Genotype> code) {
        return program.find(Kinds.GENOTYPES, code)
                .map(Genotype::name)
                .filter(name -> !name.isBlank())
                .orElse(code.text());
    }
}
