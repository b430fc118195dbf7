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
    static WantedTags of(List<Tag> tags) {
        return new WantedTags(tags, List.of());
    }
}
