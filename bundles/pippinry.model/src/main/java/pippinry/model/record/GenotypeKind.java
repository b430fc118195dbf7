package pippinry.model.record;

import pippinry.model.value.Word;

/** What sort of genetic individual it is. */
public enum GenotypeKind implements Word {
    CULTIVAR("cultivar"),
    SPECIES("species"),
    SEEDLING("seedling"),
    SELECTION("selection"),
    ROOTSTOCK("rootstock"),
    SPORT("sport");

    private final String word;

    GenotypeKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
