package pippinry.lineage.internal.chart;

/** Names of cards. */
final class Ids {

    private Ids() {}

    static String genotype(String code) {
        return "genotype " + code;
    }

    static String family(String key) {
        return "family " + key;
    }
}
