package pippinry.model.record;

import pippinry.model.value.Word;

/** What became of a task. */
public enum Outcome implements Word {
    DONE("done"),
    SKIPPED("skipped");

    private final String word;

    Outcome(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
