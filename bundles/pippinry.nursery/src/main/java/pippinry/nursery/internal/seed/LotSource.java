package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Kinds;
import pippinry.model.record.SeedLot;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/** A lot of which nobody wrote down where its seeds came from; everything raised from it would start without parents. */
public final class LotSource implements WorkRule {

    private static final int RECENT_DAYS = 730;

    @Override
    public String name() {
        return "lot-source";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return Lots.all(look)
                .filter(lot -> lot.cross().isEmpty() && lot.source().isBlank())
                .filter(lot -> look
                        .program()
                        .table(Kinds.LOTMOVES)
                        .citing(lot.code().text())
                        .stream()
                        .noneMatch(move -> move.value().to().equals(Optional.of(lot.code()))))
                .flatMap(lot -> since(look, lot).map(day -> task(lot, day)).stream());
    }

    private static Optional<LocalDate> since(Look look, SeedLot lot) {
        LocalDate day =
                lot.harvestedOn().or(lot::sownOn).map(PartialDate::latest).orElse(look.today());
        return look.isRecent(day, RECENT_DAYS) ? Optional.of(day) : Optional.empty();
    }

    private DueTask task(SeedLot lot, LocalDate day) {
        return new DueTask(
                lot.code().text(),
                name(),
                day,
                day.plusDays(14),
                "Write down where lot " + lot.code() + " came from",
                "neither cross nor source is on file; bought fruit, a gift and open seed are sources too",
                Optional.empty());
    }
}
