package pippinry.lineage.internal.kin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;

/** Parents, children and families of everybody on file, by the records alone. */
public final class Kin {

    private static final Pattern SEEDLING = Pattern.compile("(\\d{2}-\\d{3,})-\\d+");

    private final Map<String, Genotype> genotypes = new LinkedHashMap<>();
    private final Map<String, Family> families = new LinkedHashMap<>();
    private final Map<String, List<String>> familiesOfParent = new HashMap<>();
    private final Map<String, String> familyOfChild = new HashMap<>();

    private Kin(Program program) {
        program.table(Kinds.GENOTYPES)
                .forEach(row -> genotypes.put(row.value().code().text(), row.value()));
        Map<String, List<Genotype>> grouped = new LinkedHashMap<>();
        genotypes.values().stream().filter(child -> !parents(child).isEmpty()).forEach(child -> grouped.computeIfAbsent(
                        key(child), any -> new ArrayList<>())
                .add(child));
        grouped.forEach(this::put);
    }

    /** Of a program; worked out once for each of its states. */
    public static Kin of(Program program) {
        return program.derived(Kin.class, Kin::new);
    }

    private void put(String key, List<Genotype> children) {
        Genotype first = children.get(0);
        List<Bond> bonds = parents(first);
        for (Genotype child : children.subList(1, children.size())) {
            bonds = worst(bonds, parents(child));
        }
        Family family = new Family(key, cross(first), bonds, children);
        families.put(key, family);
        children.forEach(child -> familyOfChild.put(child.code().text(), key));
        family.bonds().stream().map(Bond::parent).distinct().forEach(parent -> familiesOfParent
                .computeIfAbsent(parent, any -> new ArrayList<>())
                .add(key));
    }

    private static List<Bond> worst(List<Bond> some, List<Bond> others) {
        List<Bond> worst = new ArrayList<>();
        for (int i = 0; i < some.size(); i++) {
            worst.add(some.get(i)
                    .withDoubt(some.get(i).doubt().orWorse(others.get(i).doubt())));
        }
        return worst;
    }

    private static String key(Genotype child) {
        return cross(child).orElse("") + "|" + child.sportOf().map(Code::text).orElse("") + "|"
                + child.seedParent().map(Code::text).orElse("") + "|" + child.pollenParent();
    }

    /** Number of the cross that a seedling's number names. */
    private static Optional<String> cross(Genotype child) {
        Matcher seedling = SEEDLING.matcher(child.code().text());
        return seedling.matches() ? Optional.of(seedling.group(1)) : Optional.empty();
    }

    public Optional<Genotype> genotype(String code) {
        return Optional.ofNullable(genotypes.get(code));
    }

    /** Everybody, in the order of entry. */
    public Iterable<Genotype> everybody() {
        return genotypes.values();
    }

    public Iterable<Family> families() {
        return families.values();
    }

    /** The links up from a child to those that are on file: the origin of a sport, else seed parent, then pollen parents. */
    public List<Bond> parents(Genotype child) {
        if (child.sportOf().isPresent()) {
            return List.of(new Bond(child.sportOf().get().text(), Bond.Side.SPORT, Doubt.SURE, 1));
        }
        List<Bond> bonds = new ArrayList<>();
        child.seedParent()
                .ifPresent(seed -> bonds.add(new Bond(seed.text(), Bond.Side.SEED, Doubt.of(child.seedLink()), 1)));
        PollenParent<Genotype> pollen = child.pollenParent();
        if (pollen.how() == PollenParent.How.SELF) {
            child.seedParent()
                    .ifPresent(seed ->
                            bonds.add(new Bond(seed.text(), Bond.Side.POLLEN, Doubt.of(child.pollenLink()), 1)));
        }
        boolean several = pollen.candidates().size() > 1;
        for (Code<Genotype> candidate : pollen.candidates()) {
            bonds.add(new Bond(
                    candidate.text(),
                    Bond.Side.POLLEN,
                    several ? Doubt.ONE_OF_SEVERAL : Doubt.of(child.pollenLink()),
                    1.0 / pollen.candidates().size()));
        }
        return bonds;
    }

    /** The family that a child belongs to; empty for somebody without parents on file. */
    public Optional<Family> family(String child) {
        return Optional.ofNullable(familyOfChild.get(child)).map(families::get);
    }

    /** Families in which somebody is a parent, in the order of entry. */
    public List<Family> familiesOf(String parent) {
        return familiesOfParent.getOrDefault(parent, List.of()).stream()
                .map(families::get)
                .toList();
    }

    public boolean isParent(String code) {
        return familiesOfParent.containsKey(code);
    }
}
