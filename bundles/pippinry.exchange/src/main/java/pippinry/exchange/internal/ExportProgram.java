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
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.exchange.internal.archive.ArchiveWriter;
import pippinry.exchange.internal.archive.Photos;
import pippinry.exchange.internal.tables.TableExport;
import pippinry.model.HistoryLine;
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
        description = "Writes a program out, as plain tables (CSV) if nothing else is said.",
        footer = {
            "",
            "Example:",
            "  pippinry export larkmoor larkmoor-tables",
            "  pippinry export larkmoor larkmoor.jsonl --archive"
        })
public final class ExportProgram implements Subcommand {

    @Parameters(index = "0", paramLabel = "DIR", description = "The program folder.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "OUT", description = "Where to write.")
    private Path out;

    @ArgGroup
    private final Form form = new Form();

    /** What to write; the annotations tell a person. */
    private static final class Form {

        @Option(names = "--tables", description = "Plain tables into the folder OUT (meant if nothing is said).")
        private boolean tables;

        @Option(
                names = "--archive",
                description = "The whole program with its history into the file OUT, as JSON lines;"
                        + " photos into a folder beside it.")
        private boolean archive;
    }

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
            Program program = program(call, store);
            return form.archive
                    ? writeArchive(call, store, program, destination.file("archive.jsonl"))
                    : writeTables(call, program, destination.folder());
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

    private Answer writeArchive(Call call, ProgramStore store, Program program, Path file) throws IOException {
        Progress progress = new Progress(call, "Writing");
        List<HistoryLine> history = store.history().stream()
                .filter(edit -> edit.number() <= program.edit())
                .toList();
        ArchiveWriter writer = new ArchiveWriter(program, history, store::changesOf);
        Destination.write(file, part -> writer.write(part, progress::tell));
        Photos photos = Photos.out(store.folder(), file);
        photos.copy(program);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", file.toString());
        json.put("edit", program.edit());
        json.put("photos", photos.copied());
        json.put("warnings", photos.warnings());
        StringBuilder words = new StringBuilder();
        photos.warnings()
                .forEach(warning -> words.append("Note: ").append(warning).append('\n'));
        return Answer.of(
                json,
                words + "The program with all its " + program.edit() + " edits is in " + file + ", with "
                        + photos.copied() + " photos beside it.");
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
