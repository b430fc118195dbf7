package pippinry.season.internal.walk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pippinry.season.internal.due.DueList;
import pippinry.season.internal.due.Listing;
import pippinry.season.internal.due.Words;

/** What is to be done at the places of a walk, in words for a terminal, and as values for JSON. */
public final class WalkListing {

    private WalkListing() {}

    public static String words(DueList list, Walk walk) {
        StringBuilder words = new StringBuilder(Words.date(list.today()));
        words.append(walk.stops().isEmpty() ? ": nothing is due there\n" : ", in walking order\n\n");
        walk.stops().forEach(stop -> words.append(line(stop)));
        return words.toString();
    }

    private static String line(Walk.Stop stop) {
        return "  %-22s%-14s%s%n"
                .formatted(stop.place(), stop.number(), stop.entry().task().text());
    }

    public static Map<String, ?> json(DueList list, Walk walk) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("today", list.today().toString());
        json.put("stops", walk.stops().stream().map(stop -> json(list, stop)).toList());
        json.put("missing", List.copyOf(list.missing()));
        return json;
    }

    private static Map<String, Object> json(DueList list, Walk.Stop stop) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("place", stop.place());
        json.put("number", stop.number());
        json.putAll(Listing.json(list, stop.entry()));
        return json;
    }
}
