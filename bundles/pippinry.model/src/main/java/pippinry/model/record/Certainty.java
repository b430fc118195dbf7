package pippinry.model.record;

import pippinry.model.value.Word;

/** How sure an identity or a link is. */
public enum Certainty implements Word {
    SURE("sure"),
    LIKELY("likely"),
    DOUBTFUL("doubtful");

    private final String word;

    Certainty(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
