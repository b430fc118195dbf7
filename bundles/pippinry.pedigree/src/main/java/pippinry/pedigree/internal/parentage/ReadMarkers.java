package pippinry.pedigree.internal.parentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.record.Alleles;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.traits.AlleleSeries;
import pippinry.traits.CropPack;
import pippinry.traits.Locus;
import pippinry.traits.ReferenceGenotype;
import pippinry.traits.SAllele;
import pippinry.traits.SGenotype;

/**
 * The markers of a program: alleles on file, else those of the clone a sport sprang from, else those published for a cultivar of
 * that name; and visible marks ({@link VisibleMarks}). Where nobody counted how common S-alleles are, all of the series that are
 * named are taken as equally common.
 *
 * <p>Assumed (ours, no source): one reading of alleles in a hundred is wrong, one visible mark in twenty.
 */
final class ReadMarkers {
    static final double ALLELES_MISREAD = 0.01;
    static final double MARKS_MISREAD = 0.05;

    private static final String S = "S";

    private record Reading(String alleles, String series) {}

    private final Program program;
    private final Optional<CropPack> pack;
    private final List<Genotype> genotypes;
    private final Map<Code<Genotype>, Integer> numbers = new LinkedHashMap<>();
    private final Map<String, Reading[]> readings = new LinkedHashMap<>();
    private final Set<String> faults = new LinkedHashSet<>();

    private ReadMarkers(Program program, Optional<CropPack> pack) {
        this.program = program;
        this.pack = pack;
        this.genotypes = program.table(Kinds.GENOTYPES).stream().toList();
        for (Genotype genotype : genotypes) numbers.put(genotype.code(), numbers.size());
        pack.ifPresent(facts -> addPublished(facts.referenceGenotypes()));
        program.table(Kinds.ALLELES).forEach(row -> add(row.value()));
        readings.values().forEach(this::fillSports);
    }

    /** The markers, individuals numbered as their genotypes stand on file; unreadable alleles are told of and left out. */
    static List<Marker> of(Program program, Optional<CropPack> pack, List<String> faults) {
        ReadMarkers read = new ReadMarkers(program, pack);
        List<Marker> markers = new ArrayList<>();
        if (read.readings.containsKey(S)) markers.addAll(read.sMarkers());
        pack.ifPresent(facts -> markers.addAll(read.dosages(facts)));
        faults.addAll(read.faults);
        return markers;
    }

    private void add(Alleles row) {
        Integer who = numbers.get(row.genotype());
        if (who == null || row.alleles().isBlank() || !isOfCrop(genotypes.get(who))) return;
        at(locusName(row.locus()))[who] = new Reading(row.alleles(), row.series());
    }

    private void addPublished(List<ReferenceGenotype> published) {
        Map<String, List<ReferenceGenotype>> byName =
                published.stream().collect(Collectors.groupingBy(ReferenceGenotype::cultivar));
        for (Genotype genotype : genotypes) {
            if (!isOfCrop(genotype)) continue;
            for (ReferenceGenotype row : byName.getOrDefault(genotype.name(), List.of())) {
                at(locusName(row.locus()))[numbers.get(genotype.code())] = new Reading(row.alleles(), row.series());
            }
        }
    }

    /** A genotype without a crop is taken to be of any. */
    private boolean isOfCrop(Genotype genotype) {
        String crop = genotype.crop();
        return crop.isBlank() || pack.isEmpty() || pack.get().crop().equals(crop);
    }

    private Reading[] at(String locus) {
        return readings.computeIfAbsent(locus, fresh -> new Reading[genotypes.size()]);
    }

    private String locusName(String text) {
        return pack.flatMap(facts -> facts.locus(text)).map(Locus::name).orElse(text);
    }

    private void fillSports(Reading[] ofLocus) {
        for (Genotype genotype : genotypes) {
            int who = numbers.get(genotype.code());
            if (ofLocus[who] == null) ofLocus[who] = ofLocus[originOf(who)];
        }
    }

    private int originOf(int who) {
        int origin = who;
        Optional<Integer> next = sportOf(origin);
        while (next.isPresent()) {
            origin = next.get();
            next = sportOf(origin);
        }
        return origin;
    }

    private Optional<Integer> sportOf(int who) {
        return genotypes.get(who).sportOf().map(numbers::get);
    }

    /** One marker for each series, since the same name in another series is another allele. */
    private List<Marker> sMarkers() {
        Map<String, SGenotype[]> bySeries = new LinkedHashMap<>();
        Reading[] ofLocus = readings.get(S);
        for (int who = 0; who < ofLocus.length; who++) {
            Optional<SGenotype> genotype = sGenotype(who, ofLocus[who]);
            if (genotype.isEmpty()) continue;
            bySeries.computeIfAbsent(seriesOf(ofLocus[who]).name(), fresh -> new SGenotype[ofLocus.length])[who] =
                    genotype.get();
        }
        return bySeries.entrySet().stream()
                .map(entry -> sMarker(seriesNamed(entry.getKey()), entry.getValue()))
                .toList();
    }

    private Optional<SGenotype> sGenotype(int who, Reading reading) {
        if (reading == null) return Optional.empty();
        try {
            return Optional.of(SGenotype.parse(reading.alleles(), seriesOf(reading)));
        } catch (IllegalArgumentException unreadable) {
            faults.add(genotypes.get(who).code() + ": " + unreadable.getMessage());
            return Optional.empty();
        }
    }

    private AlleleSeries seriesOf(Reading reading) {
        return seriesNamed(reading.series());
    }

    private AlleleSeries seriesNamed(String name) {
        return pack.flatMap(facts -> facts.series(name)).orElseGet(() -> AlleleSeries.open(name));
    }

    private static Marker sMarker(AlleleSeries series, SGenotype[] genotypes) {
        AlleleSeries counted = series.frequencies().isEmpty() ? evenly(series, genotypes) : series;
        return new SMarker(counted, genotypes, ALLELES_MISREAD);
    }

    private static AlleleSeries evenly(AlleleSeries series, SGenotype[] genotypes) {
        Set<SAllele> named = new TreeSet<>(series.alleles());
        Arrays.stream(genotypes)
                .filter(genotype -> genotype != null)
                .flatMap(genotype -> genotype.alleles().stream())
                .filter(SAllele::known)
                .forEach(named::add);
        Map<String, Double> even =
                named.stream().collect(Collectors.toMap(SAllele::name, allele -> 1.0 / named.size()));
        return AlleleSeries.closed(series.name(), named, even);
    }

    private List<Marker> dosages(CropPack facts) {
        List<Marker> markers = new ArrayList<>();
        for (Locus locus : facts.loci()) {
            if (locus.effectAllele().isEmpty()) continue;
            CopiesRead copies = new CopiesRead(locus, genotypes.size());
            readAlleles(locus, copies);
            boolean seen = VisibleMarks.of(program, facts, locus, numbers).addTo(copies);
            if (copies.any()) markers.add(copies.marker(seen ? MARKS_MISREAD : ALLELES_MISREAD));
        }
        return markers;
    }

    private void readAlleles(Locus locus, CopiesRead copies) {
        Reading[] ofLocus = readings.get(locus.name());
        if (ofLocus == null) return;
        for (int who = 0; who < ofLocus.length; who++) {
            boolean diploid = genotypes.get(who).ploidy().orElse(2) == 2;
            if (ofLocus[who] != null && diploid) copies.alleles(who, ofLocus[who].alleles());
        }
    }
}
