package pippinry.demo;

import java.time.LocalDate;

/** January to March 2026, up to today: what is under way when the program is opened. */
final class LastSpring {

    private static final String COLD = SeedStore.COLD;

    private final Holding holding;
    private final Book book;
    private final SeedStore seeds;
    private final Bench bench;
    private final Field field;
    private final FruitTable fruit;
    private final Upkeep upkeep;

    LastSpring(Holding holding, SeedStore seeds, Bench bench, Field field, FruitTable fruit, Upkeep upkeep) {
        this.holding = holding;
        this.book = holding.book();
        this.seeds = seeds;
        this.bench = bench;
        this.field = field;
        this.fruit = fruit;
        this.upkeep = upkeep;
    }

    /** @param planCrosses writes this spring's crosses */
    void play(Runnable planCrosses) {
        january();
        february();
        march(planCrosses);
        thisWeek();
    }

    private void january() {
        book.sitting(LocalDate.of(2026, 1, 5), "IN", "2026-second-lots-into-the-cold", "The late lots into the cold");
        for (String other : new String[] {"L25-OP", OddBoughs.LOT_UNBOUND}) {
            seeds.chill(new Lot(other, 0), LocalDate.of(2025, 12, 20), COLD);
        }
        for (Lot lot : family("25-018").lots()) {
            seeds.chill(
                    lot,
                    LocalDate.of(2026, 1, 4),
                    lot.code().endsWith("-2") ? "outdoors in damp sand, wire mesh" : COLD);
        }
    }

    private Family family(String code) {
        return holding.families().get(code);
    }

    private void february() {
        book.sitting(
                LocalDate.of(2026, 2, 22), "OD", "2026-store-and-stools", "Take-outs of the winter, stools stripped");
        fruit.takeOut(LocalDate.of(2025, 12, 14));
        fruit.takeOut(LocalDate.of(2026, 2, 8));
        bench.strip(LocalDate.of(2026, 2, 18));
        for (String stock : new String[] {"M9", "M27"}) {
            upkeep.done(
                    stock,
                    "stool-bed",
                    LocalDate.of(2026, 2, 1),
                    LocalDate.of(2026, 2, 18),
                    "stripped and counted; thin ones of M.27 lined out");
        }
        bench.lineOut("M27", 8, LocalDate.of(2026, 2, 19));
    }

    private void march(Runnable planCrosses) {
        book.sitting(
                LocalDate.of(2026, 3, 20),
                "IN",
                "2026-sown-and-grafted",
                "First lots sown, first grafts made, crosses planned");
        fruit.takeOut(LocalDate.of(2026, 3, 12));
        for (Lot lot : family("25-017").lots()) {
            LocalDate in =
                    LocalDate.of(2025, 12, Dice.of("into cold", lot.code()).whole(1, 12));
            seeds.takeOut(lot, in, COLD, LocalDate.of(2026, 2, 24));
            seeds.sow(lot, LocalDate.of(2026, 2, 26));
        }
        sowOpenSeed(LocalDate.of(2026, 3, 5));
        field.graftSome(family("24-016"), 34, LocalDate.of(2026, 3, 17));
        planCrosses.run();
    }

    private void sowOpenSeed(LocalDate day) {
        Lot lot = new Lot("L25-OP", 31);
        seeds.takeOut(lot, LocalDate.of(2025, 12, 20), COLD, day.minusDays(2));
        seeds.sow(lot, day);
    }

    private void thisWeek() {
        book.sitting(
                LocalDate.of(2026, 3, 26),
                "OD",
                "2026-first-seedlings-up",
                "First seedlings of 25-017 are up; tasks for the coming weeks");
        for (Lot lot : family("25-017").lots()) {
            LocalDate sown = LocalDate.of(2026, 2, 26);
            seeds.countEmergence(lot, sown, sown, LocalDate.of(2026, 3, 26));
        }
        holding.weather().enter(book, LocalDate.of(2025, 10, 1), LocalDate.of(2026, 3, 25), true);
        upkeep.task("24-016", LocalDate.of(2026, 3, 30), "graft the rest on M.27, wood is in the cellar");
        upkeep.task("15-007", LocalDate.of(2026, 3, 21), "cut wood of the last single trees before they are moved");
        upkeep.task("PAR", LocalDate.of(2026, 4, 6), "tie in the cordons, look for winter moth");
        upkeep.task("pollen", LocalDate.of(2026, 4, 20), "test last year's vials on sugar agar");
    }
}
