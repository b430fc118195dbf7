package pippinry.story.internal.check;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pippinry.model.Program;
import pippinry.model.record.Certainty;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.value.Code;

/** A number that was skipped is in no use, a copy's number is that of its genotype, a seedling's that of its cross. */
final class Numbers implements Check {

    private static final Pattern COPY = Pattern.compile("(\\d\\d-\\d{3}-\\d{3,})[A-Z]+");
    private static final Pattern SEEDLING = Pattern.compile("(\\d\\d-\\d{3})-\\d{3,}");

    @Override
    public void look(Program program, Consumer<Finding> found) {
        program.table(Kinds.NEVERGIVEN).forEach(row -> {
            String number = row.value().number().text();
            boolean used = program.table(Kinds.GENOTYPES).find(number).isPresent()
                    || program.table(Kinds.PLANTS).find(number).isPresent();
            if (used) {
                found.accept(Finding.fault(
                        "nevergiven", number, "number", number, "it stands as never given, yet something has it"));
            }
        });
        program.table(Kinds.PLANTS).forEach(row -> copy(row.value()).ifPresent(found));
        program.table(Kinds.GENOTYPES)
                .forEach(row -> seedling(program, row.value()).ifPresent(found));
    }

    private static Optional<Finding> copy(Plant plant) {
        Matcher number = COPY.matcher(plant.tag().text());
        boolean other = number.matches()
                && plant.genotype()
                        .filter(genotype -> !genotype.text().equals(number.group(1)))
                        .isPresent();
        boolean known = plant.certainty().filter(how -> how != Certainty.SURE).isPresent();
        return other && !known
                ? Optional.of(Finding.question(
                        "plants",
                        plant.tag().text(),
                        "genotype",
                        plant.genotype().orElseThrow(),
                        "its number says " + number.group(1) + ", and its certainty does not say likely or doubtful"))
                : Optional.empty();
    }

    private static Optional<Finding> seedling(Program program, Genotype genotype) {
        Matcher number = SEEDLING.matcher(genotype.code().text());
        if (!number.matches()) {
            return Optional.empty();
        }
        Optional<Cross> cross = program.find(Kinds.CROSSES, Code.of(number.group(1)));
        boolean doubted =
                genotype.seedLink().filter(how -> how != Certainty.SURE).isPresent();
        return cross.filter(any -> !doubted)
                .flatMap(Cross::seedParent)
                .filter(mother -> genotype.seedParent().isPresent()
                        && !genotype.seedParent().get().equals(mother))
                .map(mother -> Finding.question(
                        "genotypes",
                        genotype.code().text(),
                        "seed_parent",
                        genotype.seedParent().orElseThrow(),
                        "its cross " + number.group(1) + " has the seed parent " + mother));
    }
}
