package pippinry.model.record;

import pippinry.model.value.Word;

/** Whether a goal must be reached or is wished for. */
public enum GoalKind implements Word {
    MUST("must"),
    WISH("wish");

    private final String word;

    GoalKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
