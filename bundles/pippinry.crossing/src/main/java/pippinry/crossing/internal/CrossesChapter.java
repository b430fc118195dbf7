package pippinry.crossing.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.crossing.internal.rank.PairRanking;
import pippinry.crossing.internal.rank.RankedPair;
import pippinry.crossing.internal.rank.Wishes;
import pippinry.crossing.internal.view.CrossesPages;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.Relationship;
import pippinry.panels.Chapter;
import pippinry.panels.Page;
import pippinry.traits.CropPack;

/** The chapter about the crosses of this spring. */
@Component
public final class CrossesChapter implements Chapter {

    private static final int ORDER = 20;
    private static final int SHOWN = 12;
    private static final int FAMILY = 50;
    private static final double SURE = 0.95;

    private final Packs packs;
    private final Optional<Relationship> relationship;
    private final HouseRates rates;

    @Activate
    public CrossesChapter(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Relationship relationship,
            @Reference HouseRates rates) {
        this.packs = new Packs(packs);
        this.relationship = Optional.ofNullable(relationship);
        this.rates = rates;
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public String title() {
        return "Crosses for this spring";
    }

    @Override
    public void write(Program program, LocalDate today, Page page) {
        Wishes wishes = new Wishes(List.of(), List.of(), SURE, 1, FAMILY, SHOWN, false);
        PairRanking ranking = new PairRanking(program, packs.of(program), relationship, wishes);
        List<RankedPair> pairs = ranking.best(done -> {});
        if (!pairs.isEmpty()) {
            new CrossesPages(program, rates, page).write(pairs, ranking.notes());
        }
    }
}
