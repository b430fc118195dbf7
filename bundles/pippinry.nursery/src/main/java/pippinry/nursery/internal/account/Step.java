package pippinry.nursery.internal.account;

/** A station on the way from flower to tree, with what is counted there. */
public enum Step {
    FLOWERS("flowers"),
    SET("fruits set"),
    FRUITS("fruits picked"),
    SEEDS("full seeds"),
    SOWN("seeds sown"),
    EMERGED("emerged"),
    POTTED("potted"),
    LIVING("living now");

    private final String word;

    Step(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether the next station can hold more: a fruit has several seeds. */
    boolean multiplies() {
        return this == FRUITS;
    }
}
