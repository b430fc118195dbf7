package pippinry.nursery.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.model.Program;
import pippinry.model.record.Cross;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.nursery.internal.seed.ColdBars;
import pippinry.nursery.internal.seed.ColdOfLot;
import pippinry.nursery.internal.seed.LotSeeds;
import pippinry.nursery.internal.work.Crop;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.Term;
import pippinry.panels.Chapter;
import pippinry.panels.Page;
import pippinry.traits.CropPack;

/** The book's chapter on seed in the cold: since when, how far, and when it comes out. */
@Component
public final class ColdChapter implements Chapter {

    private static final int PAPER_WIDTH = 483;

    private final List<CropPack> packs;

    @Activate
    public ColdChapter(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this.packs = List.copyOf(packs);
    }

    @Override
    public int order() {
        return 30;
    }

    @Override
    public String title() {
        return "Seed in the cold";
    }

    @Override
    public void write(Program program, LocalDate today, Page page) {
        Look look = new Look(program, today, today, Crop.terms(program, packs), Optional.empty(), Optional.empty());
        List<ColdOfLot> lots = program.table(Kinds.SEEDLOTS).stream()
                .map(lot -> ColdOfLot.of(look, lot))
                .filter(ColdOfLot::isInTheCold)
                .sorted(Comparator.comparing(lot -> lot.lot().code()))
                .toList();
        if (lots.isEmpty()) {
            return;
        }
        Term target = look.term("chilling-days");
        ColdBars bars = new ColdBars(lots);
        page.picture(
                bars,
                bars.aspect(PAPER_WIDTH),
                "Days of cold until " + today + ". The line is what is aimed at, the band what is usual: "
                        + Math.round(target.low().orElse(target.typical())) + " to " + target.latest() + " days ("
                        + target.source()
                        + "). Outdoors a day counts by the share of its hours between 0 and 10 °C (from memory, not looked up).");
        page.table(
                List.of("Lot", "Cross", "Seeds", "Where", "In since", "Ready on"),
                lots.stream().map(lot -> row(look, lot)).toList());
        split(lots, page);
    }

    private static List<String> row(Look look, ColdOfLot lot) {
        OptionalInt seeds = LotSeeds.of(look.program(), lot.lot());
        return List.of(
                lot.lot().code().text(),
                lot.lot().cross().map(Code::text).orElse(lot.lot().source()),
                seeds.isPresent() ? Integer.toString(seeds.getAsInt()) : "",
                lot.where(),
                lot.since().map(LocalDate::toString).orElse(""),
                lot.ready().map(LocalDate::toString).orElse(""));
    }

    /** A cross whose seed lies in one place only can be lost in one night. */
    private static void split(List<ColdOfLot> lots, Page page) {
        List<String> single = new ArrayList<>();
        for (ColdOfLot lot : lots) {
            Optional<Code<Cross>> cross = lot.lot().cross();
            boolean alone = lots.stream()
                            .filter(other -> other.lot().cross().equals(cross))
                            .count()
                    == 1;
            if (cross.isPresent() && alone) {
                single.add(lot.lot().code().text());
            }
        }
        if (!single.isEmpty()) {
            page.paragraph("Kept in one place only: " + String.join(", ", single)
                    + ". Mould or mice take a whole lot; a second place is common practice.");
        }
    }
}
