package pippinry.model.record;

import pippinry.model.value.Word;

/** What was decided about a genotype. */
public enum Verdict implements Word {
    KEEP("keep"),
    WATCH("watch"),
    COPY("copy"),
    PARENT("parent"),
    ADVANCE("advance"),
    DISCARD("discard");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
