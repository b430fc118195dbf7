package pippinry.traits;

import pippinry.model.value.Word;

/** What a fact of a crop pack rests on. Doubtful facts are not in a pack at all. */
public enum Basis implements Word {
    LOOKED_UP("looked up"),
    PARTLY_LOOKED_UP("partly looked up"),
    FROM_MEMORY("from memory"),
    COMMON_PRACTICE("common practice, no source"),
    INFERRED("inferred"),
    COMPUTED("computed");

    private final String word;

    Basis(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
