package pippinry.model.record;

import pippinry.model.value.Word;

/** How the plant stands. */
public enum PlantKind implements Word {
    OWN_ROOT("own-root"),
    GRAFT("graft"),
    LIMB("limb"),
    STOOL("stool"),
    LINER("liner");

    private final String word;

    PlantKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
