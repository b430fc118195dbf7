package pippinry.labels.internal.tag;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is drawn along the edges of labels. */
public enum Marks {
    NONE,
    /** Short lines at the corners, to cut by. */
    CORNERS,
    /** A thin line around each label. */
    OUTLINES;

    /** The word a person types. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Empty when the word is none of ours. */
    public static Optional<Marks> of(String word) {
        return Arrays.stream(values())
                .filter(marks -> marks.word().equalsIgnoreCase(word))
                .findFirst();
    }
}
