package pippinry.demo;

import java.time.LocalDate;
import java.util.List;

/** The two seedlings of their own that became parents: chosen before they are proved, their S-alleles known by then. */
final class OwnParents {

    private final Holding holding;
    private final Choices choices;
    private final Laboratory laboratory;
    private final Mistakes mistakes;
    private Genotype first;
    private Genotype second;

    OwnParents(Holding holding, Choices choices, Laboratory laboratory, Mistakes mistakes) {
        this.holding = holding;
        this.choices = choices;
        this.laboratory = laboratory;
        this.mistakes = mistakes;
    }

    /** A parent by its code, or by OWN1 and OWN2. */
    Genotype get(String code) {
        return switch (code) {
            case "OWN1" -> first;
            case "OWN2" -> second;
            default -> holding.genotype(code);
        };
    }

    void choose(int year) {
        if (year == 2020) {
            first = choose(
                    "11-001", List.of(holding.genotype("ENT"), holding.genotype("CRP")), LocalDate.of(2020, 3, 20));
        }
        if (year == 2023) {
            second = choose("15-007", List.of(first, holding.genotype("ALK")), LocalDate.of(2023, 3, 20));
            testTheDoubtful(LocalDate.of(2023, 1, 10));
        }
    }

    private Genotype choose(String cross, List<Genotype> mates, LocalDate day) {
        List<Genotype> flowering = choices.flowering(cross, day.getYear());
        laboratory.test(flowering.subList(0, Math.min(4, flowering.size())), day.minusDays(70));
        Genotype chosen = choices.parent(
                flowering,
                genotype -> mates.stream()
                        .allMatch(mate -> Meiosis.fertile(genotype, mate) && Meiosis.fertile(mate, genotype)),
                day);
        laboratory.test(List.of(chosen), day.minusDays(70));
        return chosen;
    }

    /** Two seedlings that never looked like their family are tested as well. */
    private void testTheDoubtful(LocalDate day) {
        mistakes.told().keySet().stream()
                .filter(number -> number.startsWith("15-007") || number.startsWith("16-008"))
                .map(holding::genotype)
                .forEach(genotype -> laboratory.test(List.of(genotype), day));
    }
}
