package pippinry.nursery.internal.copies;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.nursery.internal.work.LastFrost;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * Potted seedlings are hardened off in the one or two weeks before frost is over here: shade and shelter first, out by day,
 * then nights (common practice, no source). Last frost by the program's own weather.
 */
public final class HardenOff implements WorkRule {

    private static final int STILL_SHOWN_DAYS = 14;

    @Override
    public String name() {
        return "harden-off";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        int now = look.hemisphere().crossYear(look.today());
        return PottedFamily.of(look)
                .filter(family -> family.year() == now)
                .filter(family -> !look.today().isAfter(look.lastFrost(now).plusDays(STILL_SHOWN_DAYS)))
                .map(family -> task(look, family));
    }

    private DueTask task(Look look, PottedFamily family) {
        LocalDate frost = look.lastFrost(family.year());
        return new DueTask(
                family.batch(),
                name(),
                frost.minusDays(look.term("hardening-off").latest()),
                frost,
                "Harden off " + family.count() + " of " + family.batch() + ": shade first, out by day, then nights",
                frostWords(look, family.year()) + "; wait a week when frost is forecast",
                Optional.empty(),
                family.numbers());
    }

    static String frostWords(Look look, int year) {
        LastFrost frost = LastFrost.of(look.program());
        return frost.expected(year)
                .map(day -> "frost is over by " + day + " in nine of ten springs (" + frost.springs() + " on file)")
                .orElse("last frost is not known here: dated by the calendar");
    }
}
