package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pippinry.traits.CropPack;
import pippinry.traits.Linkage;

/**
 * Sorts loci into linkage groups by the published distances.
 *
 * <p>A locus joins the first one of its chromosome with a known distance to it; where two stand at known distances from a
 * third and nothing is said of their own, they are laid on either side of it. Loci of one chromosome without a known
 * distance are taken as independent, and that is noted.
 */
public final class GroupsOfLoci {

    private final List<LinkageGroup> groups = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    public GroupsOfLoci(Collection<String> loci, CropPack pack, MapFunction function) {
        Map<String, Map<String, Double>> near = distances(loci, pack);
        Set<String> left = new LinkedHashSet<>(loci);
        while (!left.isEmpty()) {
            Map<String, Double> places = new LinkedHashMap<>();
            place(left.iterator().next(), 0, near, places);
            left.removeAll(places.keySet());
            groups.add(group(places, function));
        }
    }

    public List<LinkageGroup> groups() {
        return List.copyOf(groups);
    }

    /** Pairs on one chromosome whose distance is not known. */
    public List<String> notes() {
        return List.copyOf(notes);
    }

    private Map<String, Map<String, Double>> distances(Collection<String> loci, CropPack pack) {
        Map<String, Map<String, Double>> near = new TreeMap<>();
        for (Linkage linkage : pack.linkages()) {
            if (!loci.contains(linkage.one()) || !loci.contains(linkage.other())) {
                continue;
            }
            if (linkage.centimorgans().isEmpty()) {
                notes.add(linkage.one() + " and " + linkage.other() + " lie on one chromosome (" + linkage.kind()
                        + "); they are reckoned as independent.");
            } else {
                double distance = linkage.centimorgans().getAsDouble();
                near.computeIfAbsent(linkage.one(), any -> new TreeMap<>()).put(linkage.other(), distance);
                near.computeIfAbsent(linkage.other(), any -> new TreeMap<>()).put(linkage.one(), distance);
            }
        }
        return near;
    }

    private static void place(
            String locus, double at, Map<String, Map<String, Double>> near, Map<String, Double> places) {
        places.put(locus, at);
        double side = 1;
        for (Map.Entry<String, Double> neighbour :
                near.getOrDefault(locus, Map.of()).entrySet()) {
            if (!places.containsKey(neighbour.getKey()) && places.size() < LinkageGroup.MOST_LOCI) {
                place(neighbour.getKey(), at + side * neighbour.getValue(), near, places);
                side = -side;
            }
        }
    }

    private static LinkageGroup group(Map<String, Double> places, MapFunction function) {
        List<String> inOrder = places.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
        double[] recombination = new double[inOrder.size() - 1];
        for (int i = 0; i < recombination.length; i++) {
            recombination[i] = function.recombination(places.get(inOrder.get(i + 1)) - places.get(inOrder.get(i)));
        }
        return new LinkageGroup(inOrder, recombination);
    }
}
