package pippinry.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The two weeks of bloom. Set by hand is taken at 0.46 a flower for fully fertile pairs in warm weather, 0.9 of that when
 * half the pollen fails, and falls with cold and frost; published hand crosses run from 0.07 to 0.83 (reference: funnel).
 */
final class PollinationRound {

    private static final double SET_IN_GOOD_WEATHER = 0.46;

    private final Holding holding;
    private final Book book;
    private final Visits visits;
    private final Map<String, String> pollenOfTheYear = new HashMap<>();

    PollinationRound(Holding holding, Visits visits) {
        this.holding = holding;
        this.book = holding.book();
        this.visits = visits;
    }

    /** Winter: the crosses of the coming spring. */
    void plan(Plan plan, Genotype seed, Optional<Genotype> pollen) {
        Family family = new Family(plan, seed, pollen);
        holding.families().put(plan.code(), family);
        book.add(book.row(Table.CROSSES)
                .with("code", plan.code())
                .with("year", plan.year())
                .with("seed_parent", seed)
                .with("pollen_parent", family.pollenOnFile())
                .with("reason", plan.reason())
                .with("seedlings_wanted", plan.wanted()));
    }

    void work(Family family) {
        int left = family.plan().flowers();
        List<Tree> bearing = bearing(family.seed(), family.plan().year());
        for (int i = 0; left > 0; i++) {
            int flowers = Math.min(
                    left,
                    family.plan().perTag()
                            + Dice.of("flowers", family.code(), i).whole(-2, 3));
            left -= flowers;
            family.boughs().add(bough(family, bearing.get(i % bearing.size()), flowers, i));
        }
    }

    private List<Tree> bearing(Genotype genotype, int year) {
        List<Tree> bearing = new ArrayList<>(holding.inField()
                .filter(tree -> tree.truly() == genotype && tree.firstFlower() <= year)
                .toList());
        if (bearing.isEmpty()) {
            throw new IllegalStateException(genotype + " has no flowers in " + year);
        }
        return bearing.subList(0, Math.min(2, bearing.size()));
    }

    private Bough bough(Family family, Tree tree, int flowers, int index) {
        int year = family.plan().year();
        LocalDate day = holding.seasons().stage(family.seed(), year, 61).plusDays(index % 4);
        String lot = family.plan().kind().equals("hand") ? pollen(family, day) : "";
        boolean neutral = isTaggedNeutrally(family.plan(), index);
        String tag =
                neutral ? holding.numbers().next("T-04", 2) : holding.numbers().bough(family.code());
        Bough bough = new Bough(tag, tree, flowers, day, chance(family, day, tag));
        book.add(book.row(Table.POLLINATIONS)
                .with("tag", tag)
                .with("cross", neutral ? "" : family.code())
                .with("plant", tree.tag())
                .with("kind", family.plan().kind())
                .with("flowers", flowers));
        visited(family, bough, lot);
        return bough;
    }

    /** Since 2024 tags are printed ahead, and the last branches of a hand cross get one before the cross is written on it. */
    private static boolean isTaggedNeutrally(Plan plan, int index) {
        return plan.year() >= 2024 && plan.kind().equals("hand") && index >= plan.flowers() / plan.perTag() - 2;
    }

    private double chance(Family family, LocalDate day, String tag) {
        double work =
                switch (family.plan().kind()) {
                    case "open" -> 0.5;
                    case "caged_bees" -> 0.75;
                    default -> 1;
                };
        double bough = StrictMath.exp(Dice.of("luck of the bough", tag).normal(0, 0.25));
        return StrictMath.min(
                0.9, SET_IN_GOOD_WEATHER * work * fertility(family) * warmth(day) * (1 - frost(family)) * bough);
    }

    private static double fertility(Family family) {
        if (family.pollen().isEmpty()) {
            return 1;
        }
        Genotype pollen = family.pollen().get();
        double share = (double) Meiosis.pollenThatGrows(family.seed(), pollen).size()
                / pollen.genome().s().size();
        return share == 0 ? 0 : share < 1 ? 0.9 : 1;
    }

    /** Pollen tubes grow slowly at 10 to 16 °C and hardly at all below (reference: pollination facts). */
    private double warmth(LocalDate day) {
        double mean = 0;
        for (int i = 0; i < 5; i++) {
            mean += holding.weather().mean(day.plusDays(i)) / 5;
        }
        return StrictMath.max(0.4, StrictMath.min(1, 0.4 + (mean - 7.5) * 0.11));
    }

    private double frost(Family family) {
        double lowest =
                holding.seasons().lowestInBloom(family.seed(), family.plan().year());
        return lowest < -2.5 && !family.code().equals("17-010") ? 0.99 : lowest < -1.5 ? 0.35 : 0;
    }

    private String pollen(Family family, LocalDate day) {
        Genotype genotype = family.pollen().orElseThrow();
        return pollenOfTheYear.computeIfAbsent(genotype + " " + day.getYear(), any -> gather(genotype, day));
    }

    private String gather(Genotype genotype, LocalDate needed) {
        int year = needed.getYear();
        LocalDate balloon = holding.seasons().stage(genotype, year, 59);
        boolean late = balloon.isAfter(needed.minusDays(1));
        LocalDate gathered = late ? needed.minusDays(3) : balloon;
        Dice dice = Dice.of("pollen", genotype, year);
        boolean tested = !book.fromNotebooks();
        String lot = holding.numbers().next("P" + year % 100 + "-", 2);
        book.add(book.row(Table.POLLEN)
                .with("lot", lot)
                .with("genotype", genotype)
                .with("source", bearing(genotype, year).get(0).tag())
                .with("stage", late ? "cut branch forced indoors, balloon" : "balloon")
                .with("gathered_on", book.day(gathered, lot))
                .with("stored", tested ? "dried over silica gel, refrigerator" : "")
                .with("vials", tested ? dice.whole(2, 4) : null)
                .with("tested_on", tested ? gathered.plusDays(2) : "")
                .with("germinated_pct", tested ? (double) dice.whole(48, 88) : null));
        return lot;
    }

    private void visited(Family family, Bough bough, String lot) {
        LocalDate day = bough.pollinated();
        boolean hand = family.plan().kind().equals("hand");
        if (book.fromNotebooks()) {
            visits.add(bough, day, 11, "pollinated", bough.flowers(), lot);
            return;
        }
        if (hand) {
            visits.add(bough, day.minusDays(2), 10, "emasculated", bough.flowers(), "");
            visits.add(bough, day.minusDays(2), 11, "bagged", bough.flowers(), "");
            visits.add(bough, day, 14, "pollinated", bough.flowers(), lot);
            visits.add(bough, day.plusDays(2), 15, "pollinated", bough.flowers(), lot);
        } else {
            visits.add(bough, day.minusDays(2), 11, "bagged", bough.flowers(), "");
        }
    }

    /** July: what is left of this year's pollen goes into the freezer for next spring, if it germinated well. */
    void keepPollen(int year) {
        for (String lot : pollenOfTheYear.values()) {
            Row row = book.find(Table.POLLEN, lot).orElseThrow();
            if (lot.startsWith("P" + year % 100) && !row.get("vials").isEmpty()) {
                int left = Math.min(
                        row.number("vials") - 1, Dice.of("vials left", lot).whole(0, 2));
                String stored = left > 0 ? "dried over silica gel, freezer at -18 °C" : row.get("stored");
                book.change(Table.POLLEN, lot, "vials", left, "stored", stored);
            }
        }
    }

    /** Three weeks later: bags off, neutral tags bound to their cross, set counted. */
    void countSet(Family family) {
        for (Bough bough : family.boughs()) {
            bough.ripen();
            boolean counted =
                    !book.fromNotebooks() || Dice.of("counted", bough.tag()).chance(0.5);
            LocalDate day = bough.pollinated().plusDays(22);
            book.change(
                    Table.POLLINATIONS, bough.tag(), "cross", family.code(), "set_fruits", counted ? bough.set() : "");
            if (counted) {
                if (!book.fromNotebooks()) {
                    visits.add(bough, day, 17, "bag_off", bough.set(), "");
                }
                visits.add(bough, day, 18, "set", bough.set(), "");
                visits.lose(
                        bough.tag(),
                        day,
                        bough.flowers() - bough.set(),
                        frost(family) > 0.2 ? "frost in bloom" : "not set");
            }
        }
    }

    /** July: what the June drop left. */
    void countAfterJune(Family family) {
        if (book.fromNotebooks()) {
            return;
        }
        for (Bough bough : family.boughs()) {
            LocalDate day = LocalDate.of(family.plan().year(), 7, 8);
            visits.add(bough, day, 18, "june", bough.afterJune(), "");
            visits.lose(bough.tag(), day, bough.set() - bough.afterJune(), "June drop");
        }
    }

    /** Autumn: each bough's fruits are picked, or found to be gone. */
    void pick(Family family) {
        LocalDate day = LocalDate.ofYearDay(
                family.plan().year(), (int) Math.round(family.seed().worth(Trait.HARVEST)));
        for (Bough bough : family.boughs()) {
            Dice dice = Dice.of("picking", bough.tag());
            String cause =
                    bough.lost() ? "tag lost, fruits anonymous" : dice.one("wind", "wasps", "birds", "fell early");
            int gone = bough.afterJune() - bough.harvested();
            boolean written = gone > 0 && (!book.fromNotebooks() || dice.chance(0.3));
            book.change(
                    Table.POLLINATIONS,
                    bough.tag(),
                    "harvested_fruits",
                    bough.lost() ? "" : bough.harvested(),
                    "loss_cause",
                    written ? cause : "");
            visits.add(
                    bough,
                    day,
                    16,
                    bough.lost() ? "lost" : "harvest",
                    bough.lost() ? bough.afterJune() : bough.harvested(),
                    "");
            if (written) {
                visits.lose(bough.tag(), day, gone, cause);
            }
        }
    }
}
