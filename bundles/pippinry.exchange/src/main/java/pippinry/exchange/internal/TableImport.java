package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.exchange.internal.archive.ArchiveHead;
import pippinry.exchange.internal.archive.ArchiveLine;
import pippinry.exchange.internal.archive.ArchiveReader;
import pippinry.exchange.internal.archive.Photos;
import pippinry.exchange.internal.tables.FileRefused;
import pippinry.exchange.internal.tables.Import;
import pippinry.exchange.internal.tables.Refusal;
import pippinry.exchange.internal.tables.RefusedRows;
import pippinry.model.EditRefused;
import pippinry.model.HistoryLine;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** One import of plain tables, from files to the answer. */
final class TableImport {

    private static final int SHOWN = 20;

    private final Call call;
    private final ProgramStore store;
    private final Import tables;
    private final boolean keepGoing;

    TableImport(Call call, ProgramStore store, boolean update, boolean keepGoing) {
        this.call = call;
        this.store = store;
        this.tables = new Import(store.now(), update);
        this.keepGoing = keepGoing;
    }

    /** Which table each file is. */
    static Map<Path, Kind<?>> named(List<Path> files, Optional<String> table) throws CallRefused {
        Map<Path, Kind<?>> kinds = new LinkedHashMap<>();
        for (Path file : files) {
            String name = table.orElseGet(() -> tableName(file));
            Optional<Kind<?>> kind = Kinds.named(name);
            if (kind.isEmpty()) {
                throw new CallRefused(file + ": '" + name + "' is no table; name it with --as TABLE, one of: "
                        + Kinds.ALL.stream().map(Kind::table).collect(Collectors.joining(", ")));
            }
            if (kinds.put(file, kind.get()) != null) {
                throw new CallRefused(file + ": this file is named twice");
            }
        }
        return kinds;
    }

    private static String tableName(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.indexOf('.');
        return dot < 0 ? name : name.substring(0, dot);
    }

    Answer run(Map<Path, Kind<?>> files) throws CallRefused, IOException {
        read(files);
        Optional<HistoryLine> line = store();
        return answer(line, refusedFiles());
    }

    /** The photos beside the archive are carried over too. */
    Answer run(Path archive) throws CallRefused, IOException {
        readArchive(archive);
        Optional<HistoryLine> line = store();
        Photos photos = Photos.in(archive, store.folder());
        photos.copy(store.now());
        tables.warnings().addAll(photos.warnings());
        return answer(line, List.of());
    }

    /** Stores what can be; with {@code --keep-going} rows go out until the rest holds together. */
    private Optional<HistoryLine> store() throws CallRefused {
        if (!keepGoing) {
            refuseAll();
        }
        while (!tables.isEmpty()) {
            try {
                return Optional.of(store.apply(tables.edit(call.author())));
            } catch (EditRefused e) {
                tables.refuse(e.faults());
                if (!keepGoing) {
                    refuseAll();
                }
            }
        }
        return Optional.empty();
    }

    private void read(Map<Path, Kind<?>> files) throws CallRefused, IOException {
        double size = 1;
        for (Path file : files.keySet()) {
            size += Files.isRegularFile(file) ? Files.size(file) : 0;
        }
        Progress progress = new Progress(call, "Reading");
        double all = size;
        double before = 0;
        for (Map.Entry<Path, Kind<?>> file : files.entrySet()) {
            double start = before;
            try {
                tables.read(file.getKey(), file.getValue(), passed -> progress.tell((start + passed) / all));
            } catch (FileRefused e) {
                throw new CallRefused("Nothing was stored. " + e.getMessage());
            }
            before += Files.size(file.getKey());
        }
        progress.tell(1);
    }

    /** Takes the records of an archive into a program that has others; its history stays behind. */
    private void readArchive(Path archive) throws CallRefused {
        Progress progress = new Progress(call, "Reading");
        double size = archive.toFile().length() + 1.0;
        tables.startFile(archive);
        try {
            new ArchiveReader(archive).read(new RecordsOnly(), passed -> progress.tell(passed / size));
        } catch (FileRefused e) {
            throw new CallRefused("Nothing was stored. " + e.getMessage());
        }
        progress.tell(1);
    }

    /** Passes the history over. */
    private final class RecordsOnly implements ArchiveReader.Taker {

        @Override
        public void head(ArchiveHead head) {
            // Nothing of it goes into another program.
        }

        @Override
        public void line(long number, ArchiveLine line) {
            if (line instanceof ArchiveLine.Standing<?> record) {
                take(number, record);
            }
        }

        private <T extends Record> void take(long number, ArchiveLine.Standing<T> record) {
            tables.take(record.kind(), record.row().value(), number);
        }
    }

    private void refuseAll() throws CallRefused {
        List<Refusal> refusals = tables.refusals();
        if (refusals.isEmpty()) {
            return;
        }
        String shown = refusals.stream().limit(SHOWN).map(Refusal::toString).collect(Collectors.joining("\n"));
        int more = refusals.size() - SHOWN;
        throw new CallRefused("Nothing was stored: "
                + (refusals.size() == 1 ? "a row is refused." : refusals.size() + " rows are refused.") + "\n" + shown
                + (more > 0 ? "\nand " + more + " more" : ""));
    }

    private List<Path> refusedFiles() throws IOException {
        Map<Path, List<Refusal>> byFile = tables.refusals().stream()
                .collect(Collectors.groupingBy(Refusal::file, LinkedHashMap::new, Collectors.toList()));
        List<Path> written = new ArrayList<>();
        for (Map.Entry<Path, List<Refusal>> file : byFile.entrySet()) {
            Path out = RefusedRows.free(file.getKey());
            try {
                RefusedRows.write(file.getKey(), file.getValue(), out);
            } catch (FileRefused e) {
                throw new IOException(e.getMessage(), e);
            }
            written.add(out);
        }
        return written;
    }

    private Answer answer(Optional<HistoryLine> line, List<Path> refused) {
        Map<String, Object> byTable = new LinkedHashMap<>();
        tables.counts().forEach((table, counts) -> {
            Map<String, Object> numbers = new LinkedHashMap<>();
            numbers.put("added", counts.added());
            numbers.put("changed", counts.changed());
            numbers.put("on_file", counts.onFile());
            byTable.put(table, numbers);
        });
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("edit", line.map(HistoryLine::number).orElse(null));
        json.put("tables", byTable);
        json.put("refused", refusedRows());
        json.put("refused_files", refused.stream().map(Path::toString).toList());
        json.put("warnings", tables.warnings());
        return Answer.of(json, words(line, refused));
    }

    private long refusedRows() {
        return tables.refusals().stream()
                .map(refusal -> refusal.file() + ":" + refusal.line())
                .distinct()
                .count();
    }

    private String words(Optional<HistoryLine> line, List<Path> refused) {
        StringBuilder words = new StringBuilder();
        tables.counts().forEach((table, counts) -> words.append(table)
                .append(": ")
                .append(counts.added())
                .append(" added, ")
                .append(counts.changed())
                .append(" changed, ")
                .append(counts.onFile())
                .append(" on file already\n"));
        List<String> warnings = tables.warnings();
        warnings.stream()
                .limit(SHOWN)
                .forEach(warning -> words.append("Note: ").append(warning).append('\n'));
        if (warnings.size() > SHOWN) {
            words.append("and ").append(warnings.size() - SHOWN).append(" more notes of the kind\n");
        }
        refused.forEach(file -> words.append("Rows that were refused, with the reason, are in ")
                .append(file)
                .append('\n'));
        return words.append(line.map(edit -> "Stored as edit " + edit.number() + ".")
                        .orElse("Nothing new, so nothing was stored."))
                .toString();
    }
}
