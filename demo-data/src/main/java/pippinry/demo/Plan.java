package pippinry.demo;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;

/**
 * What was meant with a cross: the pair, the work, and how many of its seedlings get a tree.
 *
 * @param seed code of the seed parent, or OWN1 or OWN2 for the best seedling of an earlier cross
 * @param kind hand, open, caged_bees, or planned
 * @param tree own-root, mixed, M9 or M27: on what its seedlings are grown
 * @param field how many seedlings get a place
 * @param screen none, some or strict: how hard the pots are culled for scab
 */
record Plan(
        String code,
        int year,
        String seed,
        String pollen,
        String kind,
        int flowers,
        int perTag,
        String tree,
        int field,
        String block,
        String screen,
        int wanted,
        String reason) {

    static List<Plan> all() {
        return Resource.read("crosses.csv").stream().map(Plan::of).toList();
    }

    private static Plan of(NamedCsvRecord row) {
        return new Plan(
                row.getField("code"),
                Integer.parseInt(row.getField("year")),
                row.getField("seed"),
                row.getField("pollen"),
                row.getField("kind"),
                Integer.parseInt(row.getField("flowers")),
                Integer.parseInt(row.getField("per_tag")),
                row.getField("tree"),
                Integer.parseInt(row.getField("field")),
                row.getField("block"),
                row.getField("screen"),
                Integer.parseInt(row.getField("wanted")),
                row.getField("reason"));
    }
}
