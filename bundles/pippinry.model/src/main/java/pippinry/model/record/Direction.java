package pippinry.model.record;

import pippinry.model.value.Word;

/** Which way a trait is wanted. */
public enum Direction implements Word {
    MORE("more"),
    LESS("less"),
    NEAR("near");

    private final String word;

    Direction(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
