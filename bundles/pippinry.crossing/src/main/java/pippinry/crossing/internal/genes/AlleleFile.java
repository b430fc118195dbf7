package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pippinry.model.Program;
import pippinry.model.record.Alleles;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.traits.AlleleSeries;
import pippinry.traits.CropPack;
import pippinry.traits.Locus;
import pippinry.traits.ReferenceGenotype;
import pippinry.traits.SGenotype;

/**
 * What is on file about alleles: in the program first, else of the clone a sport sprang from, else in the crop pack under any
 * name of the genotype.
 */
public final class AlleleFile {

    /** Alleles as written, the series they are named in, and what that rests on. */
    public record Statement(String alleles, String series, String ground) {}

    private static final AlleleSeries NO_SERIES = AlleleSeries.open("");

    private final Program program;
    private final Optional<CropPack> pack;
    private final Map<String, Statement> own = new HashMap<>();
    private final Map<String, Statement> published = new HashMap<>();
    private final Set<String> faults = new LinkedHashSet<>();

    public AlleleFile(Program program, Optional<CropPack> pack) {
        this.program = program;
        this.pack = pack;
        program.table(Kinds.ALLELES).forEach(row -> add(row.value()));
        pack.ifPresent(facts -> facts.referenceGenotypes().forEach(this::add));
    }

    /** What cannot be read, each once, naming genotype, locus, value and what was expected. */
    public List<String> faults() {
        return List.copyOf(faults);
    }

    /** Alleles on file at a locus. */
    public Optional<Statement> at(Code<Genotype> genotype, String locus) {
        return at(genotype, locus, new HashSet<>());
    }

    /** Copies of the effect allele; without anything on file the prior with the given frequency. */
    public Dosage dosage(Code<Genotype> genotype, Locus locus, double frequency) {
        Optional<Statement> statement = at(genotype, locus.name());
        if (statement.isPresent()) {
            try {
                return Dosage.read(
                        statement.get().alleles(),
                        locus,
                        frequency,
                        statement.get().ground());
            } catch (IllegalArgumentException e) {
                faults.add(genotype + ": " + e.getMessage() + "; it counts as not known.");
            }
        }
        return Dosage.prior(ploidy(genotype), frequency);
    }

    /** S-alleles; a genotype without any on file gets unknown ones, as many as its ploidy. */
    public SGenotype sAlleles(Code<Genotype> genotype) {
        Optional<Statement> statement = at(genotype, "S");
        if (statement.isPresent()) {
            try {
                return SGenotype.parse(
                        statement.get().alleles(), series(statement.get().series()));
            } catch (IllegalArgumentException e) {
                faults.add(genotype + ": " + e.getMessage() + "; its S-alleles count as not known.");
            }
        }
        return SGenotype.unknown(series(""), ploidy(genotype));
    }

    /** Sets of chromosomes, 2 where nothing is on file; a sport has those of its origin. */
    public int ploidy(Code<Genotype> genotype) {
        Optional<Genotype> found = program.find(Kinds.GENOTYPES, genotype);
        if (found.isPresent() && found.get().ploidy().isPresent()) {
            return Math.max(2, found.get().ploidy().getAsInt());
        }
        return found.flatMap(Genotype::sportOf)
                .filter(origin -> !origin.equals(genotype))
                .flatMap(origin -> program.find(Kinds.GENOTYPES, origin))
                .filter(origin -> origin.ploidy().isPresent())
                .map(origin -> Math.max(2, origin.ploidy().getAsInt()))
                .orElse(2);
    }

    private AlleleSeries series(String name) {
        return pack.flatMap(facts -> facts.series(name))
                .orElseGet(() -> name.isEmpty() ? NO_SERIES : AlleleSeries.open(name));
    }

    private Optional<Statement> at(Code<Genotype> genotype, String locus, Set<Code<Genotype>> asked) {
        Statement known = own.get(key(genotype.text(), locus));
        if (known != null || !asked.add(genotype)) {
            return Optional.ofNullable(known);
        }
        Optional<Genotype> record = program.find(Kinds.GENOTYPES, genotype);
        Optional<Statement> origin = record.flatMap(Genotype::sportOf).flatMap(clone -> at(clone, locus, asked));
        if (origin.isPresent()) {
            return origin;
        }
        return record.flatMap(found -> names(found).stream()
                .map(name -> published.get(key(name, locus)))
                .filter(statement -> statement != null)
                .findFirst());
    }

    private List<String> names(Genotype genotype) {
        List<String> names =
                new ArrayList<>(List.of(genotype.name(), genotype.code().text()));
        program.table(Kinds.NAMES)
                .citing(genotype.code().text())
                .forEach(row -> names.add(row.value().name()));
        return names;
    }

    private void add(Alleles row) {
        if (!row.alleles().isBlank()) {
            own.put(
                    key(row.genotype().text(), standard(row.locus())),
                    new Statement(row.alleles(), row.series(), "on file, " + ground(row.basis(), row.source())));
        }
    }

    private void add(ReferenceGenotype row) {
        published.putIfAbsent(
                key(row.cultivar(), standard(row.locus())),
                new Statement(
                        row.alleles(),
                        row.series(),
                        "published, " + row.provenance().words()));
    }

    private static String ground(String basis, String source) {
        return basis.isBlank() ? "no basis given" : source.isBlank() ? basis : basis + ": " + source;
    }

    private String standard(String locus) {
        return pack.flatMap(facts -> facts.locus(locus)).map(Locus::name).orElse(locus);
    }

    private static String key(String genotype, String locus) {
        return genotype.toLowerCase(Locale.ROOT) + "\n" + locus;
    }
}
