package pippinry.demo;

import java.time.LocalDate;
import java.util.List;

/** Leaf samples sent away now and then: S-alleles and the scab gene as they truly are. */
final class Laboratory {

    private final Holding holding;

    Laboratory(Holding holding) {
        this.holding = holding;
    }

    /** The result is true of the plant sampled, whatever its tag says. */
    void test(Genotype labelled, Genotype truly, LocalDate day) {
        String source = "leaf sample of " + day;
        enter(labelled, "S", String.join("/", truly.genome().s()), "sequence numbering (S1..S29)", source);
        enter(labelled, Locus.RVI6.code(), truly.genome().written(Locus.RVI6), "", source);
    }

    void test(List<Genotype> genotypes, LocalDate day) {
        genotypes.forEach(genotype -> test(genotype, genotype, day));
    }

    private void enter(Genotype genotype, String locus, String alleles, String series, String source) {
        Book book = holding.book();
        if (book.find(Table.ALLELES, genotype + "/" + locus).isEmpty()) {
            book.add(book.row(Table.ALLELES)
                    .with("genotype", genotype)
                    .with("locus", locus)
                    .with("alleles", alleles)
                    .with("series", series)
                    .with("basis", "laboratory")
                    .with("source", source));
        }
    }
}
