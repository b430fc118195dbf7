package pippinry.lineage.internal.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pippinry.lineage.internal.kin.Bond;
import pippinry.lineage.internal.kin.Family;
import pippinry.lineage.internal.kin.Kin;
import pippinry.model.record.Genotype;

/**
 * Chooses what a chart shows: the one in the middle, ancestors and descendants of so many generations with the other parents
 * of their families, and the sisters. The children of a family stand behind one card, except few, those that are parents
 * themselves, and those of a family that was opened. Cost: what is shown.
 */
public final class Charting {

    /** So many children of a family are shown one by one without being asked for. */
    private static final int FEW = 3;

    /** What a person can still take in, and what is laid out while they wait. */
    private static final int MOST_CARDS = 600;

    private static final int MOST_OF_A_FAMILY = 250;

    private final Kin kin;
    private final Wish wish;
    private final Certain certain;
    private final Set<String> shown = new LinkedHashSet<>();
    private final Map<String, Integer> behind = new LinkedHashMap<>();
    private final Map<String, Family> families = new LinkedHashMap<>();
    private int leftOut;

    private Charting(Kin kin, Wish wish, Certain certain) {
        this.kin = kin;
        this.wish = wish;
        this.certain = certain;
    }

    public static Chart of(Kin kin, Wish wish, Certain certain) {
        Charting charting = new Charting(kin, wish, certain);
        wish.around()
                .filter(code -> kin.genotype(code).isPresent())
                .ifPresentOrElse(charting::around, charting::everything);
        return charting.chart();
    }

    private void around(String code) {
        show(code);
        climb(code, wish.up());
        if (wish.up() > 0) {
            kin.family(code).ifPresent(family -> take(family, 0));
        }
        descend(code, wish.down());
    }

    private void climb(String code, int generations) {
        if (generations > 0) {
            for (Bond bond : kin.parents(kin.genotype(code).orElseThrow())) {
                if (kin.genotype(bond.parent()).isPresent() && show(bond.parent())) {
                    climb(bond.parent(), generations - 1);
                }
            }
        }
    }

    private void descend(String code, int generations) {
        if (generations > 0) {
            kin.familiesOf(code).forEach(family -> take(family, generations - 1));
        }
    }

    private void everything() {
        kin.families().forEach(family -> take(family, Integer.MAX_VALUE));
    }

    /** @param further generations to go on with the children that are parents */
    private void take(Family family, int further) {
        if (families.putIfAbsent(family.key(), family) != null) {
            return;
        }
        family.bonds().stream()
                .map(Bond::parent)
                .filter(parent -> kin.genotype(parent).isPresent())
                .forEach(this::show);
        boolean open = family.children().size() <= FEW || wish.opened().contains(family.key());
        int oneByOne = 0;
        for (Genotype child : family.children()) {
            String code = child.code().text();
            boolean parent = further > 0 && kin.isParent(code);
            if (parent || (open && oneByOne < MOST_OF_A_FAMILY)) {
                oneByOne++;
                if (show(code) && parent && further < Integer.MAX_VALUE) {
                    descend(code, further);
                }
            }
        }
    }

    /** @return whether it was not shown before and there is room for it */
    private boolean show(String code) {
        if (shown.contains(code)) {
            return false;
        }
        if (shown.size() >= MOST_CARDS) {
            leftOut++;
            return false;
        }
        return shown.add(code);
    }

    private Chart chart() {
        List<Card> cards = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (String code : shown) {
            Genotype genotype = kin.genotype(code).orElseThrow();
            cards.add(card(genotype));
            for (Bond bond : certain.of(genotype, kin.parents(genotype))) {
                link(bond, Ids.genotype(code), links);
            }
        }
        families.values().forEach(family -> foldUp(family, cards, links));
        return new Chart(cards, links, leftOut);
    }

    private void link(Bond bond, String child, List<Link> links) {
        if (shown.contains(bond.parent())) {
            links.add(new Link(Ids.genotype(bond.parent()), child, bond));
        }
    }

    private Card card(Genotype genotype) {
        String code = genotype.code().text();
        return new Card(Ids.genotype(code), code, code, CardWords.of(genotype), 1, "", certain.doubts(genotype));
    }

    /** The children that are not shown one by one. */
    private void foldUp(Family family, List<Card> cards, List<Link> links) {
        List<Genotype> rest = family.children().stream()
                .filter(child -> !shown.contains(child.code().text()))
                .toList();
        if (rest.isEmpty()) {
            return;
        }
        String id = Ids.family(family.key());
        String what = rest.size() == family.children().size()
                ? family.count(rest.size())
                : "and " + family.count(rest.size()) + " more";
        Optional<String> cross = family.cross();
        String number = cross.orElse(rest.get(0).code().text());
        cards.add(new Card(
                id,
                number,
                what,
                cross.map(code -> "of " + code).orElse("together"),
                rest.size(),
                family.key(),
                List.of()));
        family.bonds().forEach(bond -> link(bond, id, links));
    }
}
