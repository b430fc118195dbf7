package pippinry.traits;

import pippinry.model.value.Word;

/** What kind of value a trait has. */
public enum TraitScale implements Word {
    /** Ordered notes, such as 1 to 9; a value between two named notes is allowed. */
    NOTE("note"),
    /** States without an order or with letters, by their code. */
    STATE("state"),
    /** A measured number with its unit. */
    NUMBER("number"),
    /** A whole number. */
    COUNT("count"),
    /** Day of the year, 1 to 366. */
    DAY("day");

    private final String word;

    TraitScale(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
