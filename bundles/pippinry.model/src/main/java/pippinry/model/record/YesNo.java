package pippinry.model.record;

import pippinry.model.value.Word;

/** Yes or no. */
public enum YesNo implements Word {
    YES("yes"),
    NO("no");

    private final String word;

    YesNo(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
