package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import pippinry.commandline.CallRefused;
import pippinry.exchange.internal.tables.FileRefused;
import pippinry.exchange.internal.tables.Import;
import pippinry.exchange.internal.tables.Refusal;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ask.RowsRefused;
import pippinry.model.ask.TableReader;
import pippinry.model.record.Kind;

/** Reads plain tables for other modules. */
@Component
public final class ReadTables implements TableReader {

    @Activate
    public ReadTables() {}

    @Override
    public Edit read(Program now, List<Path> files, boolean update, String author, String reason)
            throws RowsRefused, IOException {
        Import tables = new Import(now, update);
        for (Map.Entry<Path, Kind<?>> file : kinds(files).entrySet()) {
            try {
                tables.read(file.getKey(), file.getValue(), passed -> {});
            } catch (FileRefused e) {
                throw new RowsRefused(List.of(e.getMessage()));
            }
        }
        if (!tables.refusals().isEmpty()) {
            throw new RowsRefused(
                    tables.refusals().stream().map(Refusal::toString).toList());
        }
        return new Edit(author, reason, tables.edit(author).changes());
    }

    private static Map<Path, Kind<?>> kinds(List<Path> files) throws RowsRefused {
        try {
            return TableImport.named(files, Optional.empty());
        } catch (CallRefused e) {
            throw new RowsRefused(List.of(e.getMessage()));
        }
    }
}
