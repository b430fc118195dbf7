package pippinry.season.internal.due;

import java.util.Locale;

/** How a task stands on a day. */
public enum Status {
    /** Its last useful day is past. */
    OVERDUE,
    /** It can be done now. */
    DUE,
    /** Its first day is still to come. */
    COMING,
    DONE,
    SKIPPED;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public boolean isOpen() {
        return this != DONE && this != SKIPPED;
    }
}
