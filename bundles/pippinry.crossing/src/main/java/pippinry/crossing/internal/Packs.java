package pippinry.crossing.internal;

import java.util.List;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.traits.CropPack;

/** Finds the crop pack of a program: by its setting {@code crop}, else by the crop of its genotypes. */
public final class Packs {

    private final List<CropPack> packs;

    public Packs(List<CropPack> packs) {
        this.packs = List.copyOf(packs);
    }

    /** Empty when no pack for the crop is there. */
    public Optional<CropPack> of(Program program) {
        String crop = crop(program);
        return packs.stream().filter(pack -> pack.crop().equals(crop)).findFirst();
    }

    /** The program's crop; empty text when it says nowhere. */
    public static String crop(Program program) {
        return program.setting("crop")
                .or(() -> program.table(Kinds.GENOTYPES).stream()
                        .map(Genotype::crop)
                        .filter(crop -> !crop.isBlank())
                        .findFirst())
                .orElse("");
    }
}
