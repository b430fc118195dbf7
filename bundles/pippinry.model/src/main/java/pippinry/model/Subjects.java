package pippinry.model;

import java.util.List;
import java.util.Optional;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Finds what a code names when it may be a record of any kind. */
public final class Subjects {

    /** In this order a code is looked for: an own-root seedling's number is first of all its genotype. */
    private static final List<Kind<?>> NUMBERED = List.of(
            Kinds.GENOTYPES,
            Kinds.PLANTS,
            Kinds.CROSSES,
            Kinds.POLLINATIONS,
            Kinds.SEEDLOTS,
            Kinds.SAMPLES,
            Kinds.POLLEN,
            Kinds.BLOCKS,
            Kinds.ROWS,
            Kinds.SHEETS);

    private Subjects() {}

    /** The kind of record that the code names; empty if none has it. */
    public static Optional<Kind<?>> kindOf(Program program, String code) {
        return NUMBERED.stream()
                .filter(kind -> program.table(kind).find(code).isPresent())
                .findFirst();
    }

    /** Whether records of this kind may be spoken of by their key. */
    public static boolean mayBe(Kind<?> kind) {
        return NUMBERED.contains(kind);
    }

    /** Whether the code names a record, or a place of a block on file as {@code block/row/place}. */
    public static boolean isOnFile(Program program, String code) {
        return kindOf(program, code).isPresent() || isPlace(program, code);
    }

    private static boolean isPlace(Program program, String code) {
        String[] parts = code.split("/", -1);
        return parts.length == 3 && program.table(Kinds.BLOCKS).find(parts[0]).isPresent();
    }
}
