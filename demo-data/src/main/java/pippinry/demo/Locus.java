package pippinry.demo;

/** Single genes of which the truth is known here, with the two forms of each. */
enum Locus {
    /** Scab resistance, dominant. */
    RVI6("Rvi6", "Rvi6", "rvi6"),
    /** Ripening ethylene: two copies of form 2 keep best. */
    ACS1("Md-ACS1", "2", "1"),
    /** High acid, dominant. */
    MA("Ma", "Ma", "ma"),
    /** Red skin, dominant. */
    MYB1("MdMYB1", "R", "r");

    private final String code;
    private final String shown;
    private final String other;

    Locus(String code, String shown, String other) {
        this.code = code;
        this.shown = shown;
        this.other = other;
    }

    String code() {
        return code;
    }

    String write(boolean shows) {
        return shows ? shown : other;
    }
}
