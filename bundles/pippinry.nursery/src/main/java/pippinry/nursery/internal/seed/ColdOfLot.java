package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Chilling;
import pippinry.model.record.Kinds;
import pippinry.model.record.LotMove;
import pippinry.model.record.SeedLot;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.Term;

/**
 * The cold that a seed lot has had, day by day over all its spells, and what is left to its target. Days in refrigerator or
 * damp sand count whole; outdoors a day counts by the share of its hours that were cold enough. A lot split off from another
 * brings along the cold that it had there.
 */
public final class ColdOfLot {

    private final SeedLot lot;
    private final List<Spell> spells;
    private final double days;
    private final Term target;
    private final LocalDate today;

    private ColdOfLot(SeedLot lot, List<Spell> spells, double days, Term target, LocalDate today) {
        this.lot = lot;
        this.spells = spells;
        this.days = days;
        this.target = target;
        this.today = today;
    }

    public static ColdOfLot of(Look look, SeedLot lot) {
        List<Spell> spells = new ArrayList<>();
        gather(look, lot.code(), look.today(), new HashSet<>(), spells);
        spells.sort(Comparator.comparing(Spell::start));
        double days = spells.stream().mapToDouble(spell -> counted(look, spell)).sum();
        return new ColdOfLot(lot, spells, days, look.term("chilling-days"), look.today());
    }

    public SeedLot lot() {
        return lot;
    }

    /** Days of cold so far. */
    public double days() {
        return days;
    }

    public Term target() {
        return target;
    }

    public boolean isInTheCold() {
        return spells.stream().anyMatch(Spell::open) && !isSown();
    }

    public boolean isSown() {
        return lot.sownOn().isPresent() || lot.sown().orElse(0) > 0;
    }

    /** When its cold began; empty if it has had none. */
    public Optional<LocalDate> since() {
        return spells.stream().map(Spell::start).findFirst();
    }

    /** Where it is, or was last, as {@code refrigerator at 4 °C}. */
    public String where() {
        return spells.isEmpty() ? "" : spells.get(spells.size() - 1).record().how();
    }

    /** The day on which the target is reached, if it stays where it is; empty if it is not in the cold. */
    public Optional<LocalDate> ready() {
        return isInTheCold()
                ? Optional.of(today.plusDays((long) Math.ceil(target.typical() - days)))
                : Optional.empty();
    }

    /** The day on which the longest usual cold is over, after which it sprouts where it lies. */
    Optional<LocalDate> overdue() {
        return ready().map(day -> day.plusDays(target.latest() - target.days()));
    }

    private static void gather(
            Look look, Code<SeedLot> lot, LocalDate until, Set<Code<SeedLot>> seen, List<Spell> spells) {
        if (!seen.add(lot)) {
            return;
        }
        Program program = look.program();
        program.table(Kinds.CHILLING).citing(lot.text()).stream()
                .map(Row::value)
                .filter(chilling -> chilling.lot().equals(lot))
                .forEach(chilling -> spell(chilling, until).ifPresent(spells::add));
        program.table(Kinds.LOTMOVES).citing(lot.text()).stream()
                .map(Row::value)
                .filter(move -> move.to().equals(Optional.of(lot)))
                .forEach(move -> gather(look, move.from(), movedOn(move, until), seen, spells));
    }

    private static LocalDate movedOn(LotMove move, LocalDate until) {
        return move.date()
                .map(PartialDate::earliest)
                .filter(day -> day.isBefore(until))
                .orElse(until);
    }

    private static Optional<Spell> spell(Chilling chilling, LocalDate until) {
        return chilling.from()
                .map(PartialDate::latest)
                .filter(start -> start.isBefore(until))
                .map(start -> {
                    Optional<LocalDate> out = chilling.to().map(PartialDate::earliest);
                    LocalDate end = out.filter(day -> day.isBefore(until)).orElse(until);
                    return new Spell(
                            chilling,
                            start,
                            end,
                            out.filter(day -> !day.isAfter(until)).isEmpty());
                });
    }

    private static double counted(Look look, Spell spell) {
        return spell.isOutdoors() ? ColdOutdoors.days(look, spell.start(), spell.end()) : spell.days();
    }
}
