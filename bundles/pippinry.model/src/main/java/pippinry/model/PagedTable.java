package pippinry.model;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.page.Page;
import pippinry.model.page.Words;

/** A table that keeps its rows packed in pages, so that millions fit; a store may keep the pages as they are. */
@ProviderType
public interface PagedTable<T extends Record> extends Table<T> {

    /** The texts that the cells of the pages name by number. */
    Words words();

    /** The page of the rows whose id divided by {@link Page#ROWS} is this; empty if none of them is there. */
    Optional<Page> page(int number);
}
