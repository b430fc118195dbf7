package pippinry.panels;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** Where a chapter is written: to HTML and to PDF alike. All text is plain and is escaped where it must be. */
@ProviderType
public interface Page {

    void heading(String text);

    void paragraph(String text);

    /** A caution, set apart. */
    void caution(String text);

    /** Every row has as many cells as there are headers; cells that are numbers are set right. */
    void table(List<String> headers, List<List<String>> rows);

    /**
     * A drawn picture over the whole width.
     *
     * @param aspect height as a share of the width
     * @param caption what is seen, with units and source; also the text for who cannot see it
     */
    void picture(Picture picture, double aspect, String caption);
}
