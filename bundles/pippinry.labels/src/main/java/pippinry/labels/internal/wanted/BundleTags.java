package pippinry.labels.internal.wanted;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Graft;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantKind;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** Tags for bundles of scions: one for each kind grafted in the year, with the grafts that are to come of it. */
final class BundleTags implements TagSource {
    @Override
    public WantedTags wanted(Wish wish) {
        Map<String, List<Plant>> bundles = new TreeMap<>(NaturalOrder.BY_NUMBER);
        wish.program().table(Kinds.PLANTS).stream()
                .filter(plant -> isWanted(wish, plant))
                .forEach(plant -> bundles.computeIfAbsent(of(plant), any -> new ArrayList<>())
                        .add(plant));
        return WantedTags.of(bundles.entrySet().stream()
                .map(bundle -> tag(wish.program(), bundle.getKey(), bundle.getValue()))
                .toList());
    }

    private static boolean isWanted(Wish wish, Plant plant) {
        return plant.genotype().isPresent()
                && (wish.isOpen() ? isGraftedInTheYear(wish, plant) : wish.names(of(plant)) && isGraft(plant));
    }

    private static String of(Plant plant) {
        return plant.genotype().map(Code::text).orElseThrow();
    }

    private static boolean isGraft(Plant plant) {
        return plant.kind()
                .filter(kind -> kind == PlantKind.GRAFT || kind == PlantKind.LIMB)
                .isPresent();
    }

    static boolean isGraftedInTheYear(Wish wish, Plant plant) {
        return isGraft(plant)
                && graftedOn(wish.program(), plant)
                        .filter(date -> date.year().getValue() == wish.yearOrThis())
                        .isPresent();
    }

    private static Optional<PartialDate> graftedOn(Program program, Plant plant) {
        return program.table(Kinds.GRAFTS).citing(plant.tag().text()).stream()
                .map(row -> row.value())
                .filter(graft -> graft.plant().equals(plant.tag()))
                .map(Graft::date)
                .flatMap(Optional::stream)
                .findFirst()
                .or(plant::madeOn);
    }

    private static Tag tag(Program program, String number, List<Plant> grafts) {
        Optional<Genotype> genotype = program.find(Kinds.GENOTYPES, Code.<Genotype>of(number));
        Phrases phrases = new Phrases(program);
        String scions = grafts.size() == 1 ? "1 scion" : grafts.size() + " scions";
        return Numbered.tag(
                number,
                genotype.map(kind -> kind.name().isBlank()
                                ? phrases.parents(kind.seedParent(), kind.pollenParent())
                                : kind.name())
                        .orElse(""),
                Phrases.joined(scions) + " for "
                        + String.join(
                                ", ",
                                grafts.stream().map(graft -> graft.tag().text()).toList()));
    }
}
