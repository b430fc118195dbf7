package pippinry.demo;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plays fifteen years at Larkmoor, from the first cross in 2011 to a day in March 2026, and writes them down. */
public final class Larkmoor {

    static final LocalDate TODAY = LocalDate.of(2026, 3, 27);
    private static final String DRY = "refrigerator, in damp sand";

    private final Holding holding = new Holding();
    private final Book book = holding.book();
    private final Sight sight = new Sight(holding);
    private final Mistakes mistakes = new Mistakes();
    private final PollinationRound round = new PollinationRound(holding);
    private final SeedStore seeds = new SeedStore(holding);
    private final Bench bench = new Bench(holding);
    private final Pots pots = new Pots(holding, mistakes, sight);
    private final Field field = new Field(holding, bench, pots, mistakes);
    private final Health health = new Health(holding, sight);
    private final BloomWatch bloom = new BloomWatch(holding, sight);
    private final FruitTable fruit = new FruitTable(holding, sight);
    private final Choices choices = new Choices(holding, sight);
    private final Upkeep upkeep = new Upkeep(holding);
    private final Checks checks = new Checks(holding);
    private final List<Plan> plans = Plan.all();
    private final Parents own = new Parents();
    private Trial firstTrial;
    private Trial secondTrial;
    private List<Tree> trialGrafts = new ArrayList<>();

    /** The seedlings of their own that became parents, once chosen. */
    private final class Parents {
        private Kind first;
        private Kind second;

        Kind get(String code) {
            return switch (code) {
                case "OWN1" -> first;
                case "OWN2" -> second;
                default -> holding.kind(code);
            };
        }
    }

    /**
     * Writes the tables below the folder given: {@code larkmoor} for the program, {@code truth} for what is true of it.
     *
     * @param arguments the folder
     */
    public static void main(String[] arguments) {
        if (arguments.length != 1) {
            System.err.println("one folder to write into, such as demo-data");
            System.exit(2);
        }
        new Larkmoor().write(Path.of(arguments[0]));
    }

    /** Plays all years and writes program and truth. */
    void write(Path folder) {
        play();
        new ProgramFolder(new CsvFolder(folder.resolve("larkmoor"))).write(book.edits());
        new Truth(holding, sight, mistakes).write(new CsvFolder(folder.resolve("truth")));
    }

    Holding play() {
        book.openNotebook(
                LocalDate.of(2019, 1, 6),
                "IN",
                "goals-ground-and-old-trees",
                "What the program is for, and what stood here before the first cross");
        upkeep.goals();
        holding.ground().enter(book, "OLD", "PAR", "SB", "NUR", "A", "B");
        new OldTrees(holding).enter();
        checks.reserve();
        Arrivals.enter(upkeep);
        book.openNotebook(
                LocalDate.of(2019, 1, 20),
                "IN",
                "notebooks-2011-to-2014",
                "Typed in from the notebooks of 2011 to 2014");
        for (int year = 2011; year <= 2014; year++) {
            year(year);
        }
        book.openNotebook(
                LocalDate.of(2019, 2, 3),
                "OD",
                "notebooks-2015-to-2018",
                "Typed in from the notebooks of 2015 to 2018");
        for (int year = 2015; year <= 2018; year++) {
            year(year);
        }
        book.closeNotebooks();
        for (int year = 2019; year <= 2025; year++) {
            year(year);
        }
        new LastSpring(holding, seeds, bench, field, fruit, health, upkeep, plans, own::get).play(round);
        return holding;
    }

    private void year(int year) {
        lateWinter(year);
        march(year);
        bloomTime(year);
        june(year);
        july(year);
        lateSummer(year);
        autumn(year);
        december(year);
    }

    private List<Family> crossedIn(int year) {
        return holding.families().values().stream()
                .filter(family -> family.plan().year() == year)
                .toList();
    }

    private void lateWinter(int year) {
        book.sitting(
                LocalDate.of(year, 2, 24),
                "OD",
                year + "-store-and-trunks",
                "Take-outs of the winter, trunks measured, stools stripped");
        if (year == 2019) {
            upkeep.ownTraits();
        }
        fruit.takeOut(LocalDate.of(year - 1, 12, 14));
        fruit.takeOut(LocalDate.of(year, 2, 8));
        if (year >= 2019) {
            bench.strip(LocalDate.of(year, 2, 18));
            if (year % 2 == 1) {
                health.measure(LocalDate.of(year, 2, 22));
            }
        }
    }

    private void march(int year) {
        book.sitting(
                LocalDate.of(year, 3, 24),
                "IN",
                year + "-sown-and-grafted",
                "Seed out of the cold and sown, grafts made, crosses planned");
        fruit.takeOut(LocalDate.of(year, 3, 12));
        choices.grub(LocalDate.of(year, 3, 16), year < 2019 ? 0 : 2);
        for (Family family : crossedIn(year - 1)) {
            sow(family, year);
        }
        stools(year);
        graft(year);
        chooseParents(year);
        plans.stream().filter(plan -> plan.year() == year).forEach(this::plan);
    }

    private void sow(Family family, int year) {
        for (Lot lot : family.lots()) {
            seeds.takeOut(lot, intoCold(lot, year - 1), how(lot), LocalDate.of(year, 3, 2));
            seeds.sow(lot, LocalDate.of(year, 3, 4));
        }
    }

    private static LocalDate intoCold(Lot lot, int year) {
        return LocalDate.of(year, 12, Dice.of("into cold", lot.code()).whole(1, 12));
    }

    private static String how(Lot lot) {
        return lot.code().endsWith("-2") ? "outdoors in damp sand, wire mesh" : DRY;
    }

    private void stools(int year) {
        if (year == 2014) {
            bench.stools("M9", 1, LocalDate.of(2014, 3, 22));
        }
        if (year == 2018) {
            bench.stools("M27", 2, LocalDate.of(2018, 3, 24));
        }
    }

    private void graft(int year) {
        for (Family family : crossedIn(year - 2)) {
            field.graft(family, LocalDate.of(year, 3, 18));
        }
        trialGrafts = new ArrayList<>();
        if (year == 2020) {
            firstTrial = trial("T1", choices.best(5, LocalDate.of(year, 3, 1), "copy"), "FIE");
            trialGrafts = firstTrial.graft(LocalDate.of(year, 3, 20));
        }
        if (year == 2023) {
            secondTrial = trial("T2", choices.best(6, LocalDate.of(year, 3, 1), "copy"), "FIE", "GOD");
            trialGrafts = secondTrial.graft(LocalDate.of(year, 3, 20));
        }
    }

    private Trial trial(String block, List<Kind> selections, String... checkCodes) {
        List<Kind> entries = new ArrayList<>(selections);
        for (String code : checkCodes) {
            entries.add(holding.kind(code));
        }
        return new Trial(holding, bench, block, entries);
    }

    private void chooseParents(int year) {
        if (year == 2020) {
            own.first = choices.parent(
                    "13-004", kind -> Meiosis.fertile(kind, holding.kind("SAN")), LocalDate.of(2020, 3, 20));
        }
        if (year == 2023) {
            own.second = choices.parent("15-007", kind -> Meiosis.fertile(kind, own.first), LocalDate.of(2023, 3, 20));
        }
    }

    private void plan(Plan plan) {
        Optional<Kind> pollen = plan.pollen().equals("op") ? Optional.empty() : Optional.of(own.get(plan.pollen()));
        round.plan(plan, own.get(plan.seed()), pollen);
    }

    private void bloomTime(int year) {
        LocalDate day = holding.seasons().fullBloom(year).plusDays(13);
        book.sitting(day, "IN", year + "-bloom", "Bloom and pollination round " + year);
        bloom.watch(year);
        crossedIn(year).forEach(round::work);
        upkeep.year(year);
    }

    private void june(int year) {
        LocalDate day = later(
                LocalDate.of(year, 6, 20), holding.seasons().fullBloom(year).plusDays(30));
        book.sitting(
                day, "OD", year + "-set-counted-and-potted", "Set counted, seedlings counted, potted and numbered");
        crossedIn(year).forEach(round::countSet);
        for (Family family : crossedIn(year - 1)) {
            for (Lot lot : family.lots()) {
                LocalDate sown = LocalDate.of(year, 3, 4);
                seeds.countEmergence(lot, sown, sown, day);
                seeds.pot(lot, LocalDate.of(year, 5, 16));
            }
            pots.number(family, LocalDate.of(year, 5, 16));
        }
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    private void july(int year) {
        book.sitting(
                LocalDate.of(year, 7, 18),
                "IN",
                year + "-june-drop-and-grafts-read",
                "Counted after the June drop, grafts read");
        crossedIn(year).forEach(round::countAfterJune);
        LocalDate read = LocalDate.of(year, 7, 14);
        crossedIn(year - 2).forEach(family -> field.read(family, LocalDate.of(year, 3, 18), read));
        if (!trialGrafts.isEmpty()) {
            bench.read(trialGrafts, LocalDate.of(year, 3, 20), read);
        }
    }

    private void lateSummer(int year) {
        if (year >= 2021) {
            book.sitting(LocalDate.of(year, 8, 4), "OD", year + "-weather-logger", "Logger read, March to July");
            holding.weather().enter(book, LocalDate.of(year, 3, 1), LocalDate.of(year, 7, 31), false);
        }
        book.sitting(
                LocalDate.of(year, 9, 14),
                "OD",
                year + "-scab-and-mildew",
                "Scab and mildew walk; pots screened beside the checks");
        health.walk(LocalDate.of(year, 8, 20));
        crossedIn(year - 1).forEach(family -> pots.screen(family, LocalDate.of(year, 8, 22)));
    }

    private void autumn(int year) {
        book.sitting(
                LocalDate.of(year, 11, 6),
                "IN",
                year + "-harvest",
                "Crosses picked and seeds counted; test fruit picked and tasted");
        for (Family family : crossedIn(year)) {
            round.pick(family);
            seeds.cut(family, List.of("23-015", "25-018").contains(family.code()));
        }
        fruit.pickAll(year);
    }

    private void december(int year) {
        book.sitting(
                LocalDate.of(year, 12, 18),
                "IN",
                year + "-year-close",
                "Year closed: planted, chosen, seed into the cold");
        health.lose(year);
        checks.plant(year);
        newGround(year);
        for (Family family : crossedIn(year - 1)) {
            int wanted = family.code().equals("24-016") ? 62 : family.plan().field();
            field.firstWinter(family, wanted, LocalDate.of(year, 12, 6));
        }
        crossedIn(year - 2).forEach(family -> field.secondWinter(family, LocalDate.of(year, 12, 8)));
        for (Family family : crossedIn(year)) {
            for (Lot lot : family.lots()) {
                if (!family.code().equals("25-018")) {
                    seeds.chill(lot, intoCold(lot, year), how(lot));
                }
            }
        }
        trials(year);
        choices.review(LocalDate.of(year, 12, 14));
    }

    private void newGround(int year) {
        switch (year) {
            case 2020 -> holding.ground().enter(book, "C");
            case 2021 -> holding.ground().enter(book, "T1");
            case 2024 -> holding.ground().enter(book, "T2");
            default -> {}
        }
    }

    private void trials(int year) {
        if (year == 2021) {
            firstTrial.plant(LocalDate.of(2021, 12, 10));
        }
        if (year == 2024) {
            secondTrial.plant(LocalDate.of(2024, 12, 10));
        }
    }
}
