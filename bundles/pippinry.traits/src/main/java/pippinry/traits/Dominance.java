package pippinry.traits;

import pippinry.model.value.Word;

/** How the allele with the effect shows. */
public enum Dominance implements Word {
    /** One copy is enough. */
    DOMINANT("dominant"),
    /** Only two copies show. */
    RECESSIVE("recessive"),
    /** Each copy adds its part. */
    ADDITIVE("additive"),
    /** Every allele shows, as at S. */
    CODOMINANT("codominant");

    private final String word;

    Dominance(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
