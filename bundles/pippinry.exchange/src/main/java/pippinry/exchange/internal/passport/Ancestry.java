package pippinry.exchange.internal.passport;

import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;

/** Parents in words, the seed parent first: {@code Golden Delicious x Prima}, {@code Ribston Pippin op}. */
final class Ancestry {

    private final Program program;

    Ancestry(Program program) {
        this.program = program;
    }

    /** Empty if nothing is known. */
    String of(Genotype genotype) {
        if (genotype.sportOf().isPresent()) {
            return "sport of " + named(genotype.sportOf().get());
        }
        String seed = genotype.seedParent().map(this::named).orElse("unknown");
        return switch (genotype.pollenParent().how()) {
            case KNOWN, CANDIDATES -> seed + " x " + pollen(genotype);
            case SELF -> seed + " selfed";
            case OPEN -> seed + " op";
            case UNKNOWN -> genotype.seedParent().isPresent() ? seed + " x unknown" : "";
        };
    }

    private String pollen(Genotype genotype) {
        String names =
                genotype.pollenParent().candidates().stream().map(this::named).collect(Collectors.joining(" or "));
        return genotype.pollenParent().candidates().size() > 1 ? "(" + names + ")" : names;
    }

    private String named(Code<Genotype> code) {
        return program.find(Kinds.GENOTYPES, code)
                .map(Genotype::name)
                .filter(name -> !name.isEmpty())
                .orElse(code.text());
    }
}
