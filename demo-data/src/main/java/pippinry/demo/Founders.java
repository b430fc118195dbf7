package pippinry.demo;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The cultivars on the land and their forebears: what is on file comes from the reference, what they are worth is the
 * truth of Larkmoor, invented.
 */
final class Founders {

    private final Map<String, Genotype> genotypes = new LinkedHashMap<>();

    Founders() {
        for (NamedCsvRecord row : Resource.read("founder-worth.csv")) {
            genotypes.put(row.getField("code"), genotype(row));
        }
    }

    Genotype get(String code) {
        return genotypes.get(code);
    }

    List<Genotype> all() {
        return List.copyOf(genotypes.values());
    }

    private static Genotype genotype(NamedCsvRecord row) {
        Genome genome = new Genome(List.of(row.getField("s_alleles").split("/")), loci(row), values(row), 0);
        return new Genotype(row.getField("code"), genome, Optional.empty(), Optional.empty(), 2008, "");
    }

    private static Map<Locus, List<Boolean>> loci(NamedCsvRecord row) {
        Map<Locus, List<Boolean>> loci = new EnumMap<>(Locus.class);
        loci.put(Locus.RVI6, List.of(row.getField("rvi6").equals("1"), false));
        loci.put(Locus.ACS1, pair(row.getField("acs1"), "2"));
        loci.put(Locus.MA, pair(row.getField("ma"), "M"));
        loci.put(Locus.MYB1, pair(row.getField("myb1"), "R"));
        return loci;
    }

    private static List<Boolean> pair(String alleles, String shown) {
        return Stream.of(alleles.split("/")).map(shown::equals).toList();
    }

    private static Map<Trait, Double> values(NamedCsvRecord row) {
        Map<Trait, Double> values = new EnumMap<>(Trait.class);
        for (Trait trait : Trait.values()) {
            values.put(trait, Double.valueOf(row.getField(trait.word())));
        }
        return values;
    }

    /** Puts the genotypes and what is published of their alleles on file. */
    void enter(Book book) {
        for (NamedCsvRecord row : Resource.read("founders.csv")) {
            book.add(copy(book.row(Table.GENOTYPES), row));
        }
        for (NamedCsvRecord row : Resource.read("founder-alleles.csv")) {
            book.add(copy(book.row(Table.ALLELES), row));
        }
    }

    private static Row copy(Row to, NamedCsvRecord from) {
        from.getHeader().forEach(column -> to.with(column, from.getField(column)));
        return to;
    }
}
