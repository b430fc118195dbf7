package pippinry.labels.internal.view;

import java.util.ArrayList;
import java.util.List;
import pippinry.labels.internal.wanted.TagKind;
import pippinry.labels.internal.wanted.WantedTags;
import pippinry.labels.internal.wanted.Wish;

/**
 * Tags that can be printed now.
 *
 * @param waiting only those never printed
 */
record TagChoice(TagKind kind, boolean waiting, WantedTags tags) {

    /** What waits for a tag first, then all that there is; neutral tags are there always. */
    static List<TagChoice> of(Wish wish, int neutral) {
        List<TagChoice> choices = new ArrayList<>();
        for (TagKind kind : TagKind.values()) {
            if (kind == TagKind.NEUTRAL) {
                choices.add(new TagChoice(kind, false, kind.wanted(wish.counting(neutral))));
                continue;
            }
            WantedTags all = kind.wanted(wish);
            WantedTags waiting = kind.wanted(wish.onlyWaiting());
            if (!waiting.tags().isEmpty() && waiting.tags().size() < all.tags().size()) {
                choices.add(new TagChoice(kind, true, waiting));
            }
            if (!all.tags().isEmpty()) {
                choices.add(new TagChoice(kind, false, all));
            }
        }
        return choices;
    }

    @Override
    public String toString() {
        String what = kind.word() + ": " + kind.about();
        return (waiting ? "waiting " : "") + what + " (" + tags.tags().size() + ")";
    }
}
