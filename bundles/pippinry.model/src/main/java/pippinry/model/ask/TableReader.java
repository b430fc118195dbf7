package pippinry.model.ask;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.Edit;
import pippinry.model.Program;

/** Reads plain tables. Without it nothing can be brought in from files, and whoever wants to says so. */
@ProviderType
public interface TableReader {

    /**
     * One edit with every row of the files; it is not applied yet.
     *
     * @param now the program that the rows are to join
     * @param files base name is the table; all are read together, so their order is free
     * @param update whether a row may take the place of another with the same key and other values
     * @throws RowsRefused if any row cannot be read or would not fit; then there is no edit at all
     * @throws IOException if a file cannot be opened
     */
    Edit read(Program now, List<Path> files, boolean update, String author, String reason)
            throws RowsRefused, IOException;
}
