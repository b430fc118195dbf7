package pippinry.model.record;

import pippinry.model.value.Word;

/** How the flowers were pollinated. */
public enum PollinationKind implements Word {
    HAND("hand"),
    OPEN("open"),
    CAGED_BEES("caged_bees"),
    CONTROL_NO_POLLEN("control_no_pollen"),
    CONTROL_OPEN("control_open");

    private final String word;

    PollinationKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
