package pippinry.labels.internal.wanted;

import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.Program;
import pippinry.model.record.Certainty;
import pippinry.model.record.Genotype;
import pippinry.model.record.GenotypeKind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantKind;
import pippinry.model.value.Code;

/** Tags for living plants, in walking order. */
final class PlantTags implements TagSource {
    private final BiPredicate<Wish, Plant> fits;

    private PlantTags(BiPredicate<Wish, Plant> fits) {
        this.fits = fits;
    }

    static PlantTags alive() {
        return new PlantTags((wish, plant) -> true);
    }

    static PlantTags inTheGround() {
        return new PlantTags(
                (wish, plant) -> Standing.of(wish.program()).place(plant).isPresent());
    }

    static PlantTags inPots() {
        return new PlantTags((wish, plant) -> plant.kind().equals(Optional.of(PlantKind.OWN_ROOT))
                && Standing.of(wish.program()).place(plant).isEmpty());
    }

    static PlantTags graftedInTheYear() {
        return new PlantTags(BundleTags::isGraftedInTheYear);
    }

    @Override
    public WantedTags wanted(Wish wish) {
        return WantedTags.of(wish.program().table(Kinds.PLANTS).stream()
                .filter(plant -> wish.isOpen()
                        ? isWanted(wish, plant)
                        : wish.names(plant.tag().text()))
                .sorted(Standing.of(wish.program()).walking())
                .map(plant -> tag(wish.program(), plant))
                .toList());
    }

    private boolean isWanted(Wish wish, Plant plant) {
        return Standing.isAlive(plant) && isOfCross(wish, plant) && standsThere(wish, plant) && fits.test(wish, plant);
    }

    private static boolean isOfCross(Wish wish, Plant plant) {
        return wish.cross()
                .map(code -> plant.tag().text().startsWith(code + "-"))
                .orElse(true);
    }

    private static boolean standsThere(Wish wish, Plant plant) {
        if (wish.block().isEmpty() && wish.row().isEmpty()) {
            return true;
        }
        return Standing.of(wish.program())
                .place(plant)
                .filter(place -> wish.block()
                        .map(block -> place.block()
                                .map(Code::text)
                                .filter(block::equals)
                                .isPresent())
                        .orElse(true))
                .filter(place -> wish.row().map(place.row()::equals).orElse(true))
                .isPresent();
    }

    static Tag tag(Program program, Plant plant) {
        Optional<Genotype> genotype = plant.genotype().flatMap(code -> program.find(Kinds.GENOTYPES, code));
        Phrases phrases = new Phrases(program);
        return Numbered.tag(
                plant.tag().text(),
                genotype.map(kind -> who(phrases, kind)).orElse(""),
                Phrases.row(
                        genotype.filter(PlantTags::isSeedling)
                                .map(kind -> Phrases.year(kind.year()))
                                .orElse(""),
                        stock(plant),
                        limb(plant),
                        Standing.of(program).place(plant).map(Phrases::place).orElse("")),
                doubt(plant));
    }

    /** A seedling is told by its parents, anything else by its name. */
    private static String who(Phrases phrases, Genotype genotype) {
        String parents = phrases.parents(genotype.seedParent(), genotype.pollenParent());
        return genotype.name().isBlank() || isSeedling(genotype) && !parents.isEmpty() ? parents : genotype.name();
    }

    private static boolean isSeedling(Genotype genotype) {
        return genotype.kind().equals(Optional.of(GenotypeKind.SEEDLING));
    }

    private static String stock(Plant plant) {
        String interstem = plant.interstem().isBlank() ? "" : " over " + plant.interstem();
        return plant.rootstock().isBlank() ? "" : Phrases.joined("on " + plant.rootstock() + interstem);
    }

    private static String limb(Plant plant) {
        String height = plant.limbHeightM().isPresent()
                ? String.format(Locale.ROOT, " %.1f m", plant.limbHeightM().getAsDouble())
                : "";
        String side = plant.limbSide().isBlank() ? "" : " " + plant.limbSide();
        return plant.host()
                .map(host -> Phrases.joined("limb of " + host + height + side))
                .orElse("");
    }

    private static String doubt(Plant plant) {
        return plant.certainty().equals(Optional.of(Certainty.DOUBTFUL)) ? Phrases.joined("identity in doubt") : "";
    }
}
