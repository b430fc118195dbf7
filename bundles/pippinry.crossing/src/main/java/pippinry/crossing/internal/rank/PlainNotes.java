package pippinry.crossing.internal.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pippinry.crossing.internal.Packs;
import pippinry.crossing.internal.bloom.BloomFit;
import pippinry.crossing.internal.quantity.QuantityBook;
import pippinry.crossing.internal.rates.RateBook;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates.Step;
import pippinry.model.ask.Relationship;
import pippinry.model.record.Goal;
import pippinry.model.record.Kinds;
import pippinry.traits.CropPack;

/** What holds for every pair of a program and must be said: what is missing, what cannot be known, what to beware of. */
final class PlainNotes {

    private PlainNotes() {}

    static List<String> of(
            Program program,
            Optional<CropPack> pack,
            Optional<Relationship> relationship,
            RateBook rates,
            QuantityBook quantities) {
        List<String> notes = new ArrayList<>();
        List<Goal> goals = program.table(Kinds.GOALS).stream().toList();
        if (goals.isEmpty()) {
            notes.add(
                    "No goals are set yet: the pairs are ranked by fertility, relationship and bloom only. Set goals to rank"
                            + " by what the seedlings should be.");
        }
        if (pack.isEmpty()) {
            notes.add("There is no crop pack for '" + Packs.crop(program)
                    + "': loci, published genotypes and published rates" + " are missing.");
        }
        if (relationship.isEmpty()) {
            notes.add("The pedigree module is not there: the relationship of the parents is not reckoned with.");
        }
        if (BloomFit.of(program).empty()) {
            notes.add("No bloom dates are on file (scores of bbch 57 to 69): the bloom gap is not known.");
        }
        if (!rates.complete()) {
            notes.add("Flowers are not reckoned: neither published nor own rates reach from flower to seedling.");
        } else if (rates.belief(Step.POTTING, "").isEmpty()) {
            notes.add(
                    "Losses between emergence and potting have no published figure and no own counts: flowers are reckoned"
                            + " to the emerged seedling.");
        }
        unknownMusts(goals, pack, quantities, notes);
        pack.ifPresent(facts -> rights(facts, notes));
        return notes;
    }

    private static void unknownMusts(
            List<Goal> goals, Optional<CropPack> pack, QuantityBook quantities, List<String> notes) {
        Set<String> decided = pack.stream()
                .flatMap(facts -> facts.effects().stream())
                .filter(effect -> effect.decides())
                .map(effect -> effect.trait())
                .collect(Collectors.toSet());
        List<String> open = quantities.silent().stream()
                .filter(trait -> !decided.contains(trait))
                .toList();
        if (!open.isEmpty()) {
            notes.add("Of " + String.join(", ", open) + " too little is scored, and no gene of large effect decides it:"
                    + " what the seedlings will be cannot be told.");
        }
        if (quantities.silent().size() < goals.size()) {
            notes.add(
                    "Means and shares of scored traits come from the parents' own records, year taken out and drawn in by how few"
                            + " they are; musts are taken as independent of each other.");
        }
    }

    private static void rights(CropPack pack, List<String> notes) {
        pack.cautions().stream()
                .filter(caution -> caution.topic().equals("variety rights"))
                .map(caution -> caution.text())
                .findFirst()
                .ifPresent(notes::add);
    }
}
