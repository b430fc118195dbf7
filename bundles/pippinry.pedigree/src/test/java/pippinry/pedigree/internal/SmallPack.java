package pippinry.pedigree.internal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.traits.AlleleSeries;
import pippinry.traits.Basis;
import pippinry.traits.CalendarTask;
import pippinry.traits.Caution;
import pippinry.traits.CropPack;
import pippinry.traits.Dominance;
import pippinry.traits.KnownParentage;
import pippinry.traits.Linkage;
import pippinry.traits.Locus;
import pippinry.traits.LocusEffect;
import pippinry.traits.Provenance;
import pippinry.traits.PublishedRate;
import pippinry.traits.ReferenceGenotype;
import pippinry.traits.SAllele;
import pippinry.traits.SelfFertility;
import pippinry.traits.StockFact;
import pippinry.traits.Threshold;
import pippinry.traits.TraitDefinition;
import pippinry.traits.TraitScale;
import pippinry.traits.TraitState;

/** A crop pack for tests: S-alleles, columnar growth seen as tree type 1, and one published cultivar. */
public final class SmallPack implements CropPack {
    private static final Provenance OURS = new Provenance(Basis.COMMON_PRACTICE, "");

    @Override
    public String crop() {
        return "apple";
    }

    @Override
    public List<TraitDefinition> traits() {
        OptionalDouble none = OptionalDouble.empty();
        List<TraitState> states = List.of(new TraitState("1", "columnar"), new TraitState("2", "spreading"));
        return List.of(new TraitDefinition(
                "tree.type",
                "Tree type",
                TraitScale.NOTE,
                states,
                none,
                none,
                none,
                none,
                "",
                Optional.empty(),
                none,
                "plant",
                "",
                "",
                "",
                OURS,
                ""));
    }

    @Override
    public List<Locus> loci() {
        return List.of(
                locus("Co", Dominance.DOMINANT, "Co", "co"),
                locus("S", Dominance.CODOMINANT, "", ""),
                locus("Rvi6", Dominance.DOMINANT, "Rvi6", "rvi6"));
    }

    private static Locus locus(String name, Dominance dominance, String effect, String other) {
        return new Locus(name, List.of(), "", dominance, effect, other, 0.2, "", "", "", "", "", OURS, "");
    }

    @Override
    public List<LocusEffect> effects() {
        OptionalDouble one = OptionalDouble.of(1);
        OptionalDouble two = OptionalDouble.of(2);
        return List.of(new LocusEffect("Co", "tree.type", true, one, one, two, two, OURS, ""));
    }

    @Override
    public List<AlleleSeries> series() {
        List<String> names = Stream.of("S1", "S2", "S3", "S5", "S7", "S9").toList();
        Map<String, Double> frequencies = names.stream().collect(Collectors.toMap(name -> name, name -> 1.0 / 6));
        return List.of(AlleleSeries.closed(
                "apple", names.stream().map(SAllele::ordinary).toList(), frequencies));
    }

    @Override
    public List<ReferenceGenotype> referenceGenotypes() {
        return List.of(new ReferenceGenotype("Fuji", "S", "S1/S9", "apple", OURS, ""));
    }

    @Override
    public List<Linkage> linkages() {
        return List.of();
    }

    @Override
    public List<KnownParentage> parentages() {
        return List.of();
    }

    @Override
    public List<SelfFertility> selfFertility() {
        return List.of();
    }

    @Override
    public List<PublishedRate> rates() {
        return List.of();
    }

    @Override
    public List<StockFact> stocks() {
        return List.of();
    }

    @Override
    public List<CalendarTask> calendar() {
        return List.of();
    }

    @Override
    public List<Threshold> thresholds() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return List.of();
    }
}
