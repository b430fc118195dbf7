package pippinry.model.record;

import pippinry.model.value.Word;

/** What a row is. */
public enum RowKind implements Word {
    ROW("row"),
    CORDON("cordon"),
    BED("bed"),
    TREE("tree");

    private final String word;

    RowKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
