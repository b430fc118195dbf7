package pippinry.demo;

import java.util.ArrayList;
import java.util.List;

/** Writes what is true of Larkmoor and not in its records, so that what the program infers can be judged. */
final class Truth {

    private final Holding holding;
    private final Sight sight;
    private final Mistakes mistakes;

    Truth(Holding holding, Sight sight, Mistakes mistakes) {
        this.holding = holding;
        this.sight = sight;
        this.mistakes = mistakes;
    }

    void write(CsvFolder folder) {
        folder.clear();
        folder.table("breeding-values.csv", List.of("genotype", "trait", "breeding_value", "worth"), values());
        folder.table(
                "genes.csv", List.of("genotype", "s_alleles", "rvi6", "acs1", "ma", "myb1", "inbreeding"), genes());
        folder.table("parents.csv", List.of("genotype", "seed_parent", "pollen_parent"), parents());
        folder.table("mistakes.csv", List.of("number", "what_happened"), told());
        folder.table("plants.csv", List.of("plant", "genotype", "first_flower"), plants());
        folder.table("traits.csv", List.of("trait", "genetic_sd", "heritability", "habit_of_od"), traits());
        folder.table("seasons.csv", List.of("year", "trait", "effect"), seasons());
    }

    private List<List<String>> values() {
        List<List<String>> lines = new ArrayList<>();
        for (Genotype genotype : holding.genotypes().values()) {
            for (Trait trait : Trait.values()) {
                lines.add(List.of(
                        genotype.code(),
                        trait.word(),
                        Row.plain(genotype.genome().value(trait)),
                        Row.plain(genotype.worth(trait))));
            }
        }
        return lines;
    }

    private List<List<String>> genes() {
        return holding.genotypes().values().stream()
                .map(genotype -> List.of(
                        genotype.code(),
                        String.join("/", genotype.genome().s()),
                        genotype.genome().written(Locus.RVI6),
                        genotype.genome().written(Locus.ACS1),
                        genotype.genome().written(Locus.MA),
                        genotype.genome().written(Locus.MYB1),
                        Double.toString(genotype.genome().inbreeding())))
                .toList();
    }

    private List<List<String>> parents() {
        return holding.genotypes().values().stream()
                .filter(Genotype::isSeedling)
                .map(genotype -> List.of(
                        genotype.code(),
                        genotype.seedParent().map(Genotype::code).orElse(""),
                        genotype.pollenParent().map(Genotype::code).orElse("op")))
                .toList();
    }

    private List<List<String>> told() {
        return mistakes.told().entrySet().stream()
                .map(entry -> List.of(entry.getKey(), entry.getValue()))
                .toList();
    }

    private List<List<String>> plants() {
        return holding.trees().stream()
                .filter(tree -> tree.truly().isSeedling())
                .filter(tree -> tree.place().isPresent() || tree.labelled() != tree.truly())
                .map(tree -> List.of(tree.tag(), tree.truly().code(), Integer.toString(tree.firstFlower())))
                .toList();
    }

    private static List<List<String>> traits() {
        List<List<String>> lines = new ArrayList<>();
        for (Trait trait : Trait.values()) {
            lines.add(List.of(
                    trait.word(),
                    Row.plain(trait.geneticSd()),
                    Row.plain(trait.heritability()),
                    Row.plain(Sight.habit("OD", trait))));
        }
        return lines;
    }

    private List<List<String>> seasons() {
        List<List<String>> lines = new ArrayList<>();
        for (int year = 2011; year <= Larkmoor.TODAY.getYear() - 1; year++) {
            for (Trait trait : Trait.values()) {
                lines.add(List.of(Integer.toString(year), trait.word(), Row.plain(sight.season(trait, year))));
            }
        }
        return lines;
    }
}
