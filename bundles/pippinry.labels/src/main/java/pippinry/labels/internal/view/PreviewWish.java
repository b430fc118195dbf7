package pippinry.labels.internal.view;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import pippinry.labels.internal.tag.Placing;
import pippinry.labels.internal.tag.Tag;
import pippinry.labels.internal.tag.TagStyle;

/**
 * One page that is to be shown. It is made away from the event thread, since fonts are read and a page is drawn for it.
 *
 * @param page counted from 1; the last one is shown where there are fewer
 */
record PreviewWish(List<Tag> tags, Placing placing, TagStyle style, int page, float dotsPerInch) {

    /** A preview of the first sheets is enough; all of them are printed. */
    private static final int PREVIEWED = 600;

    /** @param image empty where it says why nothing can be shown */
    record Shown(Optional<BufferedImage> image, String words) {}

    Shown make() {
        try {
            PrintedPages pages = PrintedPages.of(tags.subList(0, Math.min(PREVIEWED, tags.size())), placing, style);
            int shown = Math.min(page, pages.pages());
            return new Shown(Optional.of(pages.image(shown - 1, dotsPerInch)), words());
        } catch (IllegalArgumentException e) {
            return new Shown(Optional.empty(), e.getMessage());
        }
    }

    private String words() {
        int sheets = (placing.start() - 1 + tags.size() + placing.format().count() - 1)
                / placing.format().count();
        return tags.size() + (tags.size() == 1 ? " tag on " : " tags on ") + sheets
                + (sheets == 1 ? " sheet" : " sheets") + "; the preview has true size";
    }
}
