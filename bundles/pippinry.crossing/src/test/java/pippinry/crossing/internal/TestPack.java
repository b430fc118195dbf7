package pippinry.crossing.internal;

import pippinry.traits.CropPack;
import pippinry.traits.TablePack;

/** A small crop pack for tests, in {@code src/test/resources/small}. */
public final class TestPack {

    private TestPack() {}

    public static CropPack pack() {
        return new TablePack("apple", TestPack.class, "/small");
    }
}
