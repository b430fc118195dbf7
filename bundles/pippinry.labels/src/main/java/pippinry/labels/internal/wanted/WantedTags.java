package pippinry.labels.internal.wanted;

import java.util.List;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.record.Pollination;

/**
 * Tags in the order in which they are hung, and the numbers that come into being with them.
 *
 * @param given pollinations that are not on file yet: neutral tags, and branches of a planned cross
 */
public record WantedTags(List<Tag> tags, List<Pollination> given) {
    /** One tag a line for a hand with a punch: number with check, a tab, the small text. */
    public String asText() {
        StringBuilder text = new StringBuilder();
        for (Tag tag : tags) {
            String line = tag.code() + "\t" + String.join("; ", tag.lines());
            text.append(line.replace('\u00a0', ' ').strip()).append('\n');
        }
        return text.toString();
    }

    static WantedTags of(List<Tag> tags) {
        return new WantedTags(tags, List.of());
    }
}
