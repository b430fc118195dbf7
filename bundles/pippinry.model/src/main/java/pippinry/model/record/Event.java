package pippinry.model.record;

import java.util.OptionalDouble;
import pippinry.model.value.PartialDate;

/** What befell: frost, hail, storm, browsing, drift. */
public record Event(
        @Needed PartialDate date, String where, String kind, OptionalDouble lowestC, String harm, String note) {

    public Event {
        Checks.range("lowest_c", lowestC, -60, 60);
    }
}
