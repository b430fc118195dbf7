package pippinry.story.internal.number;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.record.Certainty;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;

/** What is not sure about a number: its plants' identity, its parents, and what it takes over from its ancestors. */
public final class Doubts {

    private final Program program;
    private final List<String> said = new ArrayList<>();

    private Doubts(Program program) {
        this.program = program;
    }

    /** Sentences, the nearest doubt first; empty if all is sure as far as the records say. */
    public static List<String> of(Story story) {
        Doubts doubts = new Doubts(story.program());
        story.record().filter(Plant.class::isInstance).map(Plant.class::cast).ifPresent(doubts::plant);
        if (story.record().filter(Genotype.class::isInstance).isPresent()) {
            story.records(Kinds.PLANTS).forEach(doubts::plant);
        }
        story.genotype().ifPresent(doubts::lineage);
        return doubts.said;
    }

    private void plant(Plant plant) {
        unsure(plant.certainty())
                .ifPresent(how -> said.add("That " + plant.tag() + " is "
                        + plant.genotype().map(Code::text).orElse("of its kind") + " is " + how + "."));
    }

    private void lineage(Genotype start) {
        Set<Code<Genotype>> seen = new HashSet<>();
        Deque<Genotype> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            Genotype genotype = open.remove();
            if (seen.add(genotype.code())) {
                links(genotype);
                genotype.seedParent()
                        .flatMap(code -> program.find(Kinds.GENOTYPES, code))
                        .ifPresent(open::add);
                genotype.pollenParent().candidates().stream()
                        .map(code -> program.find(Kinds.GENOTYPES, code))
                        .flatMap(Optional::stream)
                        .forEach(open::add);
                genotype.sportOf()
                        .flatMap(code -> program.find(Kinds.GENOTYPES, code))
                        .ifPresent(open::add);
            }
        }
    }

    private void links(Genotype genotype) {
        String ground = genotype.linkGround().isEmpty() ? "" : " (ground: " + genotype.linkGround() + ")";
        genotype.seedParent().ifPresent(parent -> unsure(genotype.seedLink())
                .ifPresent(how -> said.add(
                        "That " + parent + " is the seed parent of " + genotype.code() + " is " + how + ground + ".")));
        if (genotype.pollenParent().how() == PollenParent.How.CANDIDATES) {
            said.add("The pollen of " + genotype.code() + " came from one of "
                    + genotype.pollenParent().candidates().stream()
                            .map(Code::text)
                            .collect(Collectors.joining(", "))
                    + ground + ".");
        } else if (genotype.pollenParent().how() != PollenParent.How.UNKNOWN) {
            unsure(genotype.pollenLink())
                    .ifPresent(how ->
                            said.add("That " + pollen(genotype) + " " + genotype.code() + " is " + how + ground + "."));
        }
    }

    private static String pollen(Genotype genotype) {
        return switch (genotype.pollenParent().how()) {
            case SELF -> "selfing gave";
            case OPEN -> "open pollination gave";
            default -> genotype.pollenParent() + " gave the pollen of";
        };
    }

    private static Optional<String> unsure(Optional<Certainty> certainty) {
        return certainty.filter(how -> how != Certainty.SURE).map(Certainty::word);
    }
}
