package pippinry.labels.internal.wanted;

import java.util.Comparator;
import java.util.Optional;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.SeedLot;
import pippinry.model.value.PartialDate;

/** Tags for bags of seed and seed trays. */
final class SeedLotTags implements TagSource {
    @Override
    public WantedTags wanted(Wish wish) {
        return WantedTags.of(wish.program().table(Kinds.SEEDLOTS).stream()
                .filter(lot -> wish.isOpen()
                        ? isWanted(wish, lot)
                        : wish.names(lot.code().text()))
                .sorted(Comparator.comparing(lot -> lot.code().text(), NaturalOrder.BY_NUMBER))
                .map(lot -> tag(wish.program(), lot))
                .toList());
    }

    private static boolean isWanted(Wish wish, SeedLot lot) {
        return lot.potted().isEmpty()
                && wish.cross()
                        .map(code ->
                                lot.cross().filter(of -> of.text().equals(code)).isPresent())
                        .orElse(true)
                && (wish.year().isEmpty()
                        || lot.harvestedOn()
                                .filter(date -> date.year().getValue() == wish.yearOrThis())
                                .isPresent());
    }

    private static Tag tag(Program program, SeedLot lot) {
        String parents = new Phrases(program).parentsOfCross(lot.cross());
        return Numbered.tag(
                lot.code().text(),
                parents.isEmpty() ? lot.source() : parents,
                Phrases.row(harvested(lot.harvestedOn()), seeds(lot)),
                lot.kept());
    }

    private static String harvested(Optional<PartialDate> date) {
        return date.map(day -> Phrases.joined("harvested " + day)).orElse("");
    }

    private static String seeds(SeedLot lot) {
        return lot.seedsFull().isPresent() ? Phrases.joined(lot.seedsFull().getAsInt() + " full seeds") : "";
    }
}
