package pippinry.lineage.internal.kin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.ask.Descent;
import pippinry.model.ask.Relationship;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/** What is known of one genotype's descent, in words, and how some parents are related. */
public final class Relatives {

    private static final int NEAREST = 4;

    private final Program program;
    private final Kin kin;
    private final Optional<Relationship> relationship;
    private final Optional<Descent> descent;

    public Relatives(Program program, Optional<Relationship> relationship, Optional<Descent> descent) {
        this.program = program;
        this.kin = Kin.of(program);
        this.relationship = relationship;
        this.descent = descent;
    }

    /**
     * @param facts sentences
     * @param doubts sentences; empty if all is sure
     */
    public record Told(String title, String name, List<String> facts, List<String> doubts) {}

    private record Near(String name, double coancestry) {}

    /** @param others whose nearness to it is told */
    public Optional<Told> of(String code, List<String> others) {
        return kin.genotype(code)
                .map(genotype -> new Told(code, genotype.name(), facts(genotype, others), doubts(genotype)));
    }

    private List<String> facts(Genotype genotype, List<String> others) {
        List<String> facts = new ArrayList<>();
        kin.parents(genotype).forEach(bond -> facts.add(parent(bond)));
        if (facts.isEmpty()) {
            facts.add("No parent of it is on file.");
        }
        relationship.ifPresentOrElse(
                known -> {
                    facts.add(KinshipWords.inbreeding(known.inbreeding(program, genotype.code())));
                    nearest(genotype, others, known).forEach(near -> facts.add(near(near)));
                },
                () -> facts.add("Nothing is said of inbreeding: the module that reckons it is not there."));
        return facts;
    }

    private String parent(Bond bond) {
        String what =
                switch (bond.side()) {
                    case SEED -> "Seed parent ";
                    case POLLEN -> "Pollen parent ";
                    case SPORT -> "Sport of ";
                };
        String doubt = bond.doubt() == Doubt.SURE ? "" : ", " + bond.doubt().words();
        return what + name(bond.parent()) + doubt;
    }

    /** A name where there is one. */
    public String name(String code) {
        return kin.genotype(code)
                .map(Genotype::name)
                .filter(name -> !name.isBlank())
                .orElse(code);
    }

    private List<Near> nearest(Genotype genotype, List<String> others, Relationship known) {
        return others.stream()
                .filter(other -> !other.equals(genotype.code().text()))
                .map(other -> new Near(name(other), known.coancestry(program, genotype.code(), Code.of(other))))
                .filter(near -> near.coancestry() > 0)
                .sorted(Comparator.comparingDouble(Near::coancestry).reversed())
                .limit(NEAREST)
                .toList();
    }

    private static String near(Near near) {
        return "With " + near.name() + ": " + KinshipWords.coancestry(near.coancestry());
    }

    private List<String> doubts(Genotype genotype) {
        return descent.map(known -> known.doubts(program, genotype.code())).orElse(List.of());
    }

    /** Coancestry of each two; empty without the module that reckons it. */
    public Optional<double[][]> square(List<String> codes) {
        return relationship.map(known -> {
            double[][] square = new double[codes.size()][codes.size()];
            for (int i = 0; i < square.length; i++) {
                for (int j = 0; j <= i; j++) {
                    square[i][j] = known.coancestry(program, Code.of(codes.get(i)), Code.of(codes.get(j)));
                    square[j][i] = square[i][j];
                }
            }
            return square;
        });
    }
}
