package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.exchange.internal.tables.TableExport;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Writes a program out. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=export", Subcommand.SUMMARY + "=writes the program out"})
@Command(
        description = "Writes a program out as plain tables (CSV), one for each kind of record it has.",
        footer = {"", "Example:", "  pippinry export larkmoor larkmoor-tables"})
public final class ExportProgram implements Subcommand {

    @Parameters(index = "0", paramLabel = "DIR", description = "The program folder.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "OUT", description = "Where to write.")
    private Path out;

    @Option(names = "--tables", description = "Plain tables into the folder OUT (this is meant if nothing is said).")
    private boolean tables;

    @Option(names = "--replace", description = "Write over what an earlier export left in OUT.")
    private boolean replace;

    @Option(
            names = "--for-spreadsheet",
            description = "Put an apostrophe before words that a spreadsheet would take for a formula."
                    + " Such tables are for reading: they do not come in again as they were.")
    private boolean forSpreadsheet;

    @Activate
    public ExportProgram() {}

    @Override
    public Answer run(Call call) throws Exception {
        Destination destination = new Destination(out, replace);
        try (ProgramStore store = call.folders().openToRead(folder, call.clock())) {
            return writeTables(call, program(call, store), destination.folder());
        } catch (IOException e) {
            throw new CallRefused(out + " cannot be written: " + e.getMessage());
        }
    }

    /** Inside {@code asof} the call's own program is the one of that day. */
    private Program program(Call call, ProgramStore store) {
        try {
            return Files.isSameFile(call.folder(), folder) ? call.program() : store.now();
        } catch (CallRefused | IOException e) {
            return store.now();
        }
    }

    private Answer writeTables(Call call, Program program, Path into) throws IOException {
        TableExport export = new TableExport(program, forSpreadsheet);
        List<Kind<?>> filled = export.filled();
        Map<String, Object> rows = new LinkedHashMap<>();
        for (Kind<?> kind : filled) {
            call.progress("Writing " + kind.table(), (double) rows.size() / filled.size());
            Destination.write(into.resolve(TableExport.fileName(kind)), file -> export.write(kind, file));
            rows.put(kind.table(), program.table(kind).size());
        }
        call.progress("Written", 1);
        Destination.removeStale(into, empty(filled));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("folder", into.toString());
        json.put("edit", program.edit());
        json.put("tables", rows);
        StringBuilder words = new StringBuilder();
        rows.forEach((table, count) ->
                words.append(table).append(".csv: ").append(count).append(" rows\n"));
        return Answer.of(json, words.append("The tables are in ").append(into).toString());
    }

    private static List<String> empty(List<Kind<?>> filled) {
        List<String> names = new ArrayList<>();
        for (Kind<?> kind : Kinds.ALL) {
            if (!filled.contains(kind)) {
                names.add(TableExport.fileName(kind));
            }
        }
        return names;
    }
}
