package pippinry.traits;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * What is published and usual about one crop. A pack holds facts, never records of a program; without it a program keeps all
 * its data and loses only the definitions. Every fact carries its {@link Provenance}.
 */
@ConsumerType
public interface CropPack {

    /** The crop as it is named in a program, such as {@code apple}. */
    String crop();

    List<TraitDefinition> traits();

    List<Locus> loci();

    List<LocusEffect> effects();

    List<Linkage> linkages();

    /** Series of S-alleles; the first one is meant when a program names none. */
    List<AlleleSeries> series();

    List<ReferenceGenotype> referenceGenotypes();

    List<KnownParentage> parentages();

    List<SelfFertility> selfFertility();

    List<PublishedRate> rates();

    List<StockFact> stocks();

    List<CalendarTask> calendar();

    List<Threshold> thresholds();

    List<Caution> cautions();

    default Optional<TraitDefinition> trait(String code) {
        return traits().stream().filter(trait -> trait.code().equals(code)).findFirst();
    }

    /** The locus of this name or synonym. */
    default Optional<Locus> locus(String name) {
        return loci().stream().filter(locus -> locus.called(name)).findFirst();
    }

    /** The series of this name; the first one where a program names none or just the crop. */
    default Optional<AlleleSeries> series(String name) {
        return name.isEmpty() || name.equals(crop())
                ? series().stream().findFirst()
                : series().stream().filter(series -> series.name().equals(name)).findFirst();
    }

    /** The first rate of this name, which is the one to plan with. */
    default Optional<PublishedRate> rate(String name) {
        return rates().stream().filter(rate -> rate.name().equals(name)).findFirst();
    }
}
