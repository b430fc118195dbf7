package pippinry.exchange.internal.archive;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.LongFunction;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.Settled;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/**
 * Writes a whole program as JSON lines: its head, every record by kind and id, then every edit, each followed by what it
 * changed. Cells are the texts of the plain tables, empty ones left out. The same program gives the same bytes.
 */
public final class ArchiveWriter {

    private final Program program;
    private final List<HistoryLine> history;
    private final LongFunction<List<Settled<?>>> changes;

    /**
     * @param history up to the program's last edit
     * @param changes gives what an edit changed
     */
    public ArchiveWriter(Program program, List<HistoryLine> history, LongFunction<List<Settled<?>>> changes) {
        this.program = program;
        this.history = history;
        this.changes = changes;
    }

    /** @param progress the share of the work that is done */
    public void write(Path file, DoubleConsumer progress) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file));
                JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.setRootValueSeparator(new SerializedString("\n"));
            head(json);
            for (Kind<?> kind : Kinds.ALL) {
                table(json, kind);
                progress.accept(0.5 * Kinds.ALL.indexOf(kind) / Kinds.ALL.size());
            }
            for (HistoryLine edit : history) {
                edit(json, edit);
                progress.accept(0.5 + 0.5 * edit.number() / history.size());
            }
            json.flush();
            out.write("\n".getBytes(StandardCharsets.UTF_8));
        }
    }

    private void head(JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", ArchiveHead.FORMAT);
        json.writeNumberField("version", ArchiveHead.VERSION);
        json.writeStringField("program", program.setting("name").orElse(""));
        json.writeNumberField("edits", history.size());
        json.writeEndObject();
    }

    private <T extends Record> void table(JsonGenerator json, Kind<T> kind) throws IOException {
        for (Row<T> row : program.table(kind).rows()) {
            json.writeStartObject();
            json.writeStringField("table", kind.table());
            json.writeNumberField("id", row.id());
            cells(json, "row", kind, Optional.of(row.value()));
            json.writeEndObject();
        }
    }

    private void edit(JsonGenerator json, HistoryLine edit) throws IOException {
        List<Settled<?>> changed = changes.apply(edit.number());
        json.writeStartObject();
        json.writeNumberField("edit", edit.number());
        json.writeStringField("time", edit.time().toString());
        json.writeStringField("author", edit.author());
        json.writeStringField("reason", edit.reason());
        json.writeNumberField("records", changed.size());
        if (edit.takesBack().isPresent()) {
            json.writeNumberField("takes_back", edit.takesBack().getAsLong());
        }
        json.writeEndObject();
        for (Settled<?> change : changed) {
            change(json, edit.number(), change);
        }
    }

    private <T extends Record> void change(JsonGenerator json, long edit, Settled<T> change) throws IOException {
        json.writeStartObject();
        json.writeNumberField("of", edit);
        json.writeStringField("table", change.kind().table());
        json.writeNumberField("id", change.id());
        cells(json, "before", change.kind(), change.before());
        cells(json, "after", change.kind(), change.after());
        json.writeEndObject();
    }

    private static <T extends Record> void cells(JsonGenerator json, String name, Kind<T> kind, Optional<T> row)
            throws IOException {
        if (row.isEmpty()) {
            return;
        }
        json.writeObjectFieldStart(name);
        for (Column column : kind.columns()) {
            String text = kind.cell(row.get(), column);
            if (!text.isEmpty()) {
                json.writeStringField(column.name(), text);
            }
        }
        json.writeEndObject();
    }
}
