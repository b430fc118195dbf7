package pippinry.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where the records of Larkmoor are wrong or doubtful, so that what is inferred can be judged. */
final class Mistakes {

    /** True parents of a seedling; no pollen parent means stray pollen. */
    record Parents(Genotype seed, Optional<Genotype> pollen) {}

    private final Map<String, String> told = new LinkedHashMap<>();
    private final List<String> seedlings = new ArrayList<>();

    /** The true parents of the seedling that is potted as this one of its family. */
    Parents parents(Holding holding, Family family, String number, int index) {
        String where = family.code() + " " + index;
        return switch (where) {
            case "14-005 11" ->
                tell(
                        number,
                        "pots changed with 14-006: open seed of James Grieve",
                        holding.genotype("JGR"),
                        Optional.empty());
            case "14-006 4" ->
                tell(
                        number,
                        "pots changed with 14-005: Cox's Orange Pippin x Florina",
                        holding.genotype("COX"),
                        Optional.of(holding.genotype("FLO")));
            case "15-007 30" ->
                tell(number, "an open flower was left in the bag: stray pollen", family.seed(), Optional.empty());
            case "16-008 19" ->
                tell(
                        number,
                        "selfed: Fiesta sets a little with its own pollen",
                        family.seed(),
                        Optional.of(family.seed()));
            default -> new Parents(family.seed(), mixedPollen(holding, family, number, index));
        };
    }

    /** Two vials stood open on one evening of 2017, so every fifth seedling has the other father. */
    private Optional<Genotype> mixedPollen(Holding holding, Family family, String number, int index) {
        if (family.code().equals("17-010") && index % 5 == 2) {
            return tell(
                            number,
                            "two vials were open: GoldRush is the father",
                            family.seed(),
                            Optional.of(holding.genotype("GOR")))
                    .pollen();
        }
        return family.pollen();
    }

    private Parents tell(String number, String what, Genotype seed, Optional<Genotype> pollen) {
        seedlings.add(number);
        told.put(number, what);
        return new Parents(seed, pollen);
    }

    void tell(String tag, String what) {
        told.put(tag, what);
    }

    /** Seedlings that are kept whatever their looks, or the mistake would never matter. */
    boolean isKept(String number) {
        return seedlings.contains(number);
    }

    Map<String, String> told() {
        return told;
    }
}
