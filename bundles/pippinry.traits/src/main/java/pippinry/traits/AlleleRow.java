package pippinry.traits;

import java.util.OptionalDouble;

/** A row of alleles.csv: an S-allele in its series, with how common it is where that is known. */
record AlleleRow(String series, SAllele allele, OptionalDouble frequency, Provenance provenance) {

    private static final String NOTHING = "nothing";

    /** Empty columns {@code rejects} and {@code answers_as} mean the ordinary: its own name. */
    static AlleleRow of(TableRow row) {
        String name = row.needed("allele");
        return new AlleleRow(
                row.needed("series"),
                new SAllele(name, pollen(row.text("rejects"), name), pollen(row.text("answers_as"), name)),
                row.number("frequency"),
                row.provenance());
    }

    private static String pollen(String text, String name) {
        return text.isEmpty() ? name : text.equals(NOTHING) ? "" : text;
    }
}
