package pippinry.model.record;

import pippinry.model.value.Word;

/** What has become of the plant. */
public enum PlantStatus implements Word {
    ALIVE("alive"),
    DEAD("dead"),
    GRUBBED("grubbed"),
    LOST("lost"),
    GIVEN("given");

    private final String word;

    PlantStatus(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
