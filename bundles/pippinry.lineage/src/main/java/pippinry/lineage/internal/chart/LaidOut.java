package pippinry.lineage.internal.chart;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A chart with a place for each card: parents to the left of their children.
 *
 * @param places by the cards' names
 */
public record LaidOut(Chart chart, Map<String, Place> places, List<Way> ways, double width, double height) {

    public LaidOut {
        places = Map.copyOf(places);
        ways = List.copyOf(ways);
    }

    public static LaidOut empty() {
        return new LaidOut(Chart.empty(), Map.of(), List.of(), 1, 1);
    }

    public Optional<Card> at(double x, double y) {
        return chart.cards().stream()
                .filter(card -> places.get(card.id()).contains(x, y))
                .findFirst();
    }

    /**
     * The card that somebody means who goes on from another one in a direction: the nearest, where going aside counts twice.
     *
     * @param right 1, -1, or 0 when going up or down
     * @param down 1, -1, or 0 when going aside
     */
    public Optional<Card> next(Card from, int right, int down) {
        Place here = places.get(from.id());
        return chart.cards().stream()
                .filter(card -> ahead(here, places.get(card.id()), right, down) > 1)
                .min(Comparator.comparingDouble(card -> cost(here, places.get(card.id()), right, down)));
    }

    private static double ahead(Place here, Place there, int right, int down) {
        return right * (there.middleX() - here.middleX()) + down * (there.middleY() - here.middleY());
    }

    private static double cost(Place here, Place there, int right, int down) {
        double aside = Math.abs(down * (there.middleX() - here.middleX()) + right * (there.middleY() - here.middleY()));
        return ahead(here, there, right, down) + 2 * aside;
    }
}
