package pippinry.nursery.internal.work;

import java.util.List;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.traits.CropPack;

/** Which crop a program breeds, and what is known of it. */
public final class Crop {

    private Crop() {}

    /** The pack of the setting {@code crop}; empty if there is no such pack. */
    public static Optional<CropPack> pack(Program program, List<CropPack> packs) {
        return program.setting("crop").flatMap(crop -> packs.stream()
                .filter(pack -> pack.crop().equalsIgnoreCase(crop))
                .findFirst());
    }

    public static Terms terms(Program program, List<CropPack> packs) {
        return Terms.of(pack(program, packs));
    }
}
