package pippinry.lineage.internal.chart;

import java.util.List;
import java.util.Optional;

/**
 * Cards and the lines between them, before they have places.
 *
 * @param leftOut how many cards more there would be
 */
public record Chart(List<Card> cards, List<Link> links, int leftOut) {

    public Chart {
        cards = List.copyOf(cards);
        links = List.copyOf(links);
    }

    public static Chart empty() {
        return new Chart(List.of(), List.of(), 0);
    }

    public Optional<Card> card(String id) {
        return cards.stream().filter(card -> card.id().equals(id)).findFirst();
    }

    /** The card of a number: its own, or that of the family it stands behind. */
    public Optional<Card> cardOf(String number) {
        return cards.stream().filter(card -> card.number().equals(number)).findFirst();
    }
}
