package pippinry.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Tastings before Christmas: pairs of apples, the better one named. The chance that one wins follows Bradley and Terry
 * (1952, Rank analysis of incomplete block designs, Biometrika) on the true worth of its taste.
 */
final class TastingTable {

    private final Holding holding;

    TastingTable(Holding holding) {
        this.holding = holding;
    }

    void sit(List<Genotype> apples, LocalDate day, List<String> judges) {
        for (String judge : judges) {
            List<Genotype[]> pairs = pairs(apples);
            Dice dice = Dice.of("tasting", day, judge);
            dice.shuffle(pairs);
            int order = 1;
            for (Genotype[] pair : pairs.subList(0, Math.min(9, pairs.size()))) {
                compare(pair, day, judge, order, dice);
                order++;
            }
        }
    }

    private static List<Genotype[]> pairs(List<Genotype> apples) {
        List<Genotype[]> pairs = new ArrayList<>();
        for (int i = 0; i < apples.size(); i++) {
            for (int j = i + 1; j < apples.size(); j++) {
                pairs.add(new Genotype[] {apples.get(i), apples.get(j)});
            }
        }
        return pairs;
    }

    private void compare(Genotype[] pair, LocalDate day, String judge, int order, Dice dice) {
        double better = pair[0].worth(Trait.LIKING) - pair[1].worth(Trait.LIKING);
        boolean first = dice.chance(1 / (1 + StrictMath.exp(-1.2 * better)));
        holding.book()
                .add(holding.book()
                        .row(Table.TASTINGS)
                        .with("session", "tasting of " + day)
                        .with("judge", judge)
                        .with("order", order)
                        .with("winner", pair[first ? 0 : 1])
                        .with("loser", pair[first ? 1 : 0]));
    }
}
