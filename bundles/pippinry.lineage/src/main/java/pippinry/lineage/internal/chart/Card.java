package pippinry.lineage.internal.chart;

import java.util.List;

/**
 * A card of the chart: one genotype, or children of a family that are not shown one by one.
 *
 * @param id tells it from every other card; stays the same when the chart is drawn anew
 * @param number what is selected with it
 * @param title its first line
 * @param subtitle its second line
 * @param members how many stand behind it: 1 for a genotype
 * @param family key of the family that it opens; empty for a genotype
 * @param doubts why its descent is not sure, a sentence each
 */
public record Card(
        String id, String number, String title, String subtitle, int members, String family, List<String> doubts) {

    public Card {
        doubts = List.copyOf(doubts);
    }

    public boolean isFamily() {
        return !family.isEmpty();
    }
}
