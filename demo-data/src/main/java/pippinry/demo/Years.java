package pippinry.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The round of the year at Larkmoor, with each part of the work in its month and each sitting at the desk after it. */
final class Years {

    private final Holding holding;
    private final Book book;
    private final PollinationRound round;
    private final OddBoughs odd;
    private final SeedStore seeds;
    private final OtherSeed otherSeed;
    private final Bench bench;
    private final Pots pots;
    private final Field field;
    private final Health health;
    private final BloomWatch bloom;
    private final FruitTable fruit;
    private final Choices choices;
    private final Upkeep upkeep;
    private final Checks checks;
    private final Doubts doubts;
    private final SecondStage secondStage;
    private final OwnParents own;
    private final List<Plan> plans = Plan.all();

    Years(Holding holding, Sight sight, Mistakes mistakes) {
        this.holding = holding;
        this.book = holding.book();
        Visits visits = new Visits(holding);
        this.round = new PollinationRound(holding, visits);
        this.odd = new OddBoughs(holding, visits);
        this.seeds = new SeedStore(holding);
        this.otherSeed = new OtherSeed(holding);
        this.bench = new Bench(holding);
        this.pots = new Pots(holding, mistakes, sight);
        this.field = new Field(holding, bench, pots, mistakes);
        this.health = new Health(holding, sight);
        this.bloom = new BloomWatch(holding, sight);
        this.fruit = new FruitTable(holding, sight);
        this.choices = new Choices(holding, sight);
        this.upkeep = new Upkeep(holding);
        this.checks = new Checks(holding);
        this.doubts = new Doubts(holding, mistakes);
        this.secondStage = new SecondStage(holding, bench, choices, upkeep);
        this.own = new OwnParents(holding, choices, new Laboratory(holding), mistakes);
    }

    /** Goals, ground, and what stood here before the first cross. */
    void before() {
        upkeep.goals();
        holding.ground().enter(book, "OLD", "PAR", "SB", "NUR", "A", "B");
        new OldTrees(holding).enter();
        checks.reserve();
        Arrivals.enter(upkeep);
    }

    void play(int first, int last) {
        for (int year = first; year <= last; year++) {
            year(year);
        }
    }

    /** January to March 2026. */
    void lastSpring() {
        new LastSpring(holding, seeds, bench, field, fruit, upkeep)
                .play(() -> plans.stream().filter(plan -> plan.year() == 2026).forEach(this::plan));
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
        own.choose(year);
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
        return lot.code().endsWith("-2") ? "outdoors in damp sand, wire mesh" : SeedStore.COLD;
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
        secondStage.graft(year);
    }

    private void plan(Plan plan) {
        Optional<Genotype> pollen = plan.pollen().equals("op") ? Optional.empty() : Optional.of(own.get(plan.pollen()));
        round.plan(plan, own.get(plan.seed()), pollen);
    }

    private void bloomTime(int year) {
        LocalDate day = holding.seasons().fullBloom(year).plusDays(13);
        book.sitting(day, "IN", year + "-bloom", "Bloom and pollination round " + year);
        bloom.watch(year);
        crossedIn(year).forEach(round::work);
        crossedIn(year).forEach(odd::control);
        odd.forget(year);
        upkeep.year(year);
    }

    private void june(int year) {
        LocalDate day = later(
                LocalDate.of(year, 6, 20), holding.seasons().fullBloom(year).plusDays(30));
        book.sitting(
                day, "OD", year + "-set-counted-and-potted", "Set counted, seedlings counted, potted and numbered");
        crossedIn(year).forEach(round::countSet);
        odd.countSet();
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
        odd.countAfterJune(year);
        LocalDate read = LocalDate.of(year, 7, 14);
        crossedIn(year - 2).forEach(family -> field.read(family, LocalDate.of(year, 3, 18), read));
        secondStage.read(year);
        round.keepPollen(year);
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
        odd.pick(year);
        odd.pickForgotten(year);
        otherSeed.year(year);
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
        secondStage.plant(year);
        doubts.year(year);
        choices.review(LocalDate.of(year, 12, 14));
        secondStage.taste(year);
    }

    private void newGround(int year) {
        switch (year) {
            case 2020 -> holding.ground().enter(book, "C");
            case 2022 -> holding.ground().enter(book, "T1");
            case 2024 -> holding.ground().enter(book, "T2");
            default -> {}
        }
    }
}
