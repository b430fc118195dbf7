package pippinry.pedigree.internal.parentage;

import java.util.List;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.traits.CropPack;

/** The crop pack of a program: by its setting `crop`, else by the crop of its first genotype that has one. */
final class PackOfProgram {
    private PackOfProgram() {}

    static Optional<CropPack> of(Program program, List<CropPack> packs) {
        String crop = program.setting("crop").orElseGet(() -> ofGenotypes(program));
        return packs.stream().filter(pack -> pack.crop().equals(crop)).findFirst();
    }

    private static String ofGenotypes(Program program) {
        return program.table(Kinds.GENOTYPES).stream()
                .map(Genotype::crop)
                .filter(crop -> !crop.isBlank())
                .findFirst()
                .orElse("");
    }
}
