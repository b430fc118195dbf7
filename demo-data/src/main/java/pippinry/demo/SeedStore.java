package pippinry.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * Seed from the cut fruit to the first leaves: counted, kept cold, sown, counted again. Full seeds a fruit 4.5 to 8.6 and
 * emergence 54 to 87 % by year are published (reference: funnel); ours differ by year within that.
 */
final class SeedStore {

    static final String COLD = "refrigerator, in damp sand";

    private static final Map<Integer, Double> EMERGENCE = Map.ofEntries(
            Map.entry(2012, 0.62),
            Map.entry(2013, 0.55),
            Map.entry(2014, 0.78),
            Map.entry(2015, 0.7),
            Map.entry(2016, 0.82),
            Map.entry(2017, 0.76),
            Map.entry(2018, 0.8),
            Map.entry(2020, 0.83),
            Map.entry(2021, 0.58),
            Map.entry(2022, 0.79),
            Map.entry(2023, 0.74),
            Map.entry(2024, 0.81),
            Map.entry(2025, 0.77),
            Map.entry(2026, 0.75));

    private final Holding holding;
    private final Book book;

    SeedStore(Holding holding) {
        this.holding = holding;
        this.book = holding.book();
    }

    /** Cuts the fruits of a cross and counts the seeds; into one lot, or into two that are kept apart. */
    void cut(Family family, boolean inTwo) {
        if (family.fruits() == 0) {
            return;
        }
        Dice dice = Dice.of("seeds", family.code());
        double perOvule = family.pollen().isEmpty() ? 0.55 : 0.64;
        int full = 0;
        int empty = 0;
        for (int fruit = 0; fruit < family.fruits(); fruit++) {
            int formed = dice.binomial(10, StrictMath.min(0.95, perOvule * dice.between(0.7, 1.3)));
            int hollow = dice.binomial(formed, 0.07);
            full += formed - hollow;
            empty += hollow;
        }
        LocalDate day = LocalDate.ofYearDay(
                family.plan().year(), (int) Math.round(family.seed().worth(Trait.HARVEST)));
        Lot lot = new Lot("L" + family.code(), full);
        family.lots().add(lot);
        boolean counted = !book.fromNotebooks() || dice.chance(0.6);
        book.add(book.row(Table.SEEDLOTS)
                .with("code", lot.code())
                .with("cross", family.code())
                .with(
                        "source",
                        family.pollen().isEmpty()
                                ? "open pollinated, " + family.seed().code()
                                : "")
                .with("harvested_on", book.day(day, lot.code()))
                .with("fruits", family.fruits())
                .with("seeds_full", full)
                .with("seeds_empty", counted ? empty : "")
                .with("kept", dice.one("dry, paper bag", "in the fruit, cellar", "washed, damp sand")));
        if (inTwo) {
            split(family, lot, day.plusDays(20));
        }
    }

    private void split(Family family, Lot from, LocalDate day) {
        int seeds = from.full() / 3;
        Lot second = new Lot(from.code() + "-2", seeds);
        from.lose(seeds);
        family.lots().add(second);
        book.add(book.row(Table.SEEDLOTS)
                .with("code", second.code())
                .with("cross", family.code())
                .with("source", "a third of " + from.code())
                .with("harvested_on", day.minusDays(20))
                .with("kept", "washed, damp sand")
                .with("note", "kept in a second place against mice and mould"));
        book.add(book.row(Table.LOTMOVES)
                .with("from", from.code())
                .with("to", second.code())
                .with("date", day)
                .with("seeds", seeds));
    }

    /** December: into the cold. */
    void chill(Lot lot, LocalDate from, String how) {
        book.add(chillRow(lot, from, how));
    }

    private Row chillRow(Lot lot, LocalDate from, String how) {
        return book.row(Table.CHILLING)
                .with("lot", lot.code())
                .with("from", book.day(from, "chill", lot.code()))
                .with("how", how)
                .with("temp_c", how.startsWith("refrigerator") ? 4.0 : null);
    }

    /** Out of the cold: what is mouldy or gnawed is thrown away. */
    void takeOut(Lot lot, LocalDate from, String how, LocalDate to) {
        book.change(Table.CHILLING, chillRow(lot, from, how).key(), "to", book.day(to, "out", lot.code()));
        Dice dice = Dice.of("cold", lot.code());
        lose(
                lot,
                dice.binomial(lot.full(), how.startsWith("outdoors") ? 0.06 : 0.02),
                to,
                how.startsWith("outdoors") ? "mice" : "mould in the cold");
    }

    private void lose(Lot lot, int seeds, LocalDate day, String cause) {
        lot.lose(seeds);
        loss(lot, seeds, day, cause);
    }

    private void loss(Lot lot, int number, LocalDate day, String cause) {
        if (number > 0
                && (!book.fromNotebooks()
                        || Dice.of("written", lot.code(), cause).chance(0.5))) {
            book.add(book.row(Table.LOSSES)
                    .with("subject", lot.code())
                    .with("date", book.day(day, lot.code(), cause))
                    .with("number", number)
                    .with("cause", cause));
        }
    }

    void sow(Lot lot, LocalDate day) {
        lot.sow();
        book.change(Table.SEEDLOTS, lot.code(), "sown_on", book.day(day, "sown", lot.code()), "sown", lot.sown());
    }

    /** Counts what came up between the two days, once a week; the share that comes in all depends on the year. */
    void countEmergence(Lot lot, LocalDate sown, LocalDate from, LocalDate to) {
        int all = Dice.of("emergence", lot.code()).binomial(lot.sown(), EMERGENCE.get(sown.getYear()));
        int seen = lot.emerged();
        for (int week : List.of(20, 26, 33, 40, 47, 55)) {
            LocalDate day = sown.plusDays(week);
            int up = (int) Math.round(all * share(week));
            if (!day.isBefore(from) && !day.isAfter(to)) {
                if (!book.fromNotebooks()) {
                    book.add(book.row(Table.EMERGENCE)
                            .with("lot", lot.code())
                            .with("date", day)
                            .with("emerged", up));
                }
                seen = up;
            }
        }
        lot.emerge(seen);
        book.change(Table.SEEDLOTS, lot.code(), "emerged", seen);
    }

    /** Three to seven weeks from sowing, most in the fifth (reference: funnel). */
    private static double share(int days) {
        return switch (days) {
            case 20 -> 0.06;
            case 26 -> 0.22;
            case 33 -> 0.55;
            case 40 -> 0.82;
            case 47 -> 0.95;
            default -> 1;
        };
    }

    /** May: what is sound goes into pots of its own; the rest is lost for a reason. */
    void pot(Lot lot, LocalDate day) {
        Dice dice = Dice.of("potting", lot.code());
        int damped = dice.binomial(lot.emerged(), 0.05);
        int weak = dice.binomial(lot.emerged() - damped, 0.035);
        int slugs = dice.binomial(lot.emerged() - damped - weak, 0.02);
        lot.pot(lot.emerged() - damped - weak - slugs);
        book.change(Table.SEEDLOTS, lot.code(), "potted", lot.potted());
        loss(lot, lot.sown() - lot.emerged(), day, "did not come up");
        loss(lot, damped, day, "damped off");
        loss(lot, weak, day, "weak or without green");
        loss(lot, slugs, day, "slugs");
    }
}
