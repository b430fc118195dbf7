package pippinry.model.record;

import pippinry.model.value.Word;

/** What was done at a visit to a pollinated branch. */
public enum Done implements Word {
    EMASCULATED("emasculated"),
    BAGGED("bagged"),
    POLLINATED("pollinated"),
    BAG_OFF("bag_off"),
    SET("set"),
    JUNE("june"),
    HARVEST("harvest"),
    LOST("lost");

    private final String word;

    Done(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
