package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.exchange.internal.tables.TableExport;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/**
 * Plain tables into a folder.
 *
 * @param forSpreadsheet whether words that act as formulas are guarded
 */
record TablesOut(boolean forSpreadsheet) implements Outgoing {

    @Override
    public Answer write(Call call, ProgramStore store, Program program, Destination out)
            throws IOException, CallRefused {
        Path folder = out.folder();
        TableExport export = new TableExport(program, forSpreadsheet);
        List<Kind<?>> filled = export.filled();
        Map<String, Object> rows = new LinkedHashMap<>();
        for (Kind<?> kind : filled) {
            call.progress("Writing", (double) rows.size() / filled.size());
            Destination.write(folder.resolve(TableExport.fileName(kind)), file -> export.write(kind, file));
            rows.put(kind.table(), program.table(kind).size());
        }
        call.progress("Writing", 1);
        Destination.removeStale(folder, empty(filled));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("folder", folder.toString());
        json.put("edit", program.edit());
        json.put("tables", rows);
        StringBuilder words = new StringBuilder();
        rows.forEach((table, count) ->
                words.append(table).append(".csv: ").append(count).append(" rows\n"));
        return Answer.of(json, words.append("The tables are in ").append(folder).toString());
    }

    private static List<String> empty(List<Kind<?>> filled) {
        return Kinds.ALL.stream()
                .filter(kind -> !filled.contains(kind))
                .map(TableExport::fileName)
                .toList();
    }
}
