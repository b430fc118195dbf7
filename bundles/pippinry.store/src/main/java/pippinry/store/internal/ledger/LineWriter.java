package pippinry.store.internal.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import pippinry.model.Settled;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;

/** Writes the lines of a ledger, each as far as its sum: without the sum, the closing brace and the line break. */
final class LineWriter {

    private static final JsonFactory JSON =
            JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_CONTENT).build();

    private LineWriter() {}

    static byte[] header(SegmentHead head) throws IOException {
        return line(json -> {
            json.writeStringField("ledger", SegmentHead.LEDGER);
            json.writeNumberField("format", head.format());
            json.writeNumberField("segment", head.segment());
            json.writeStringField("program", head.program());
            json.writeStringField("time", head.time().toString());
        });
    }

    static byte[] edit(EditHead head, List<Settled<?>> changes) throws IOException {
        return line(json -> {
            head(json, "edit", head);
            changes(json, changes);
        });
    }

    static byte[] begin(EditHead head) throws IOException {
        return line(json -> head(json, "begin", head));
    }

    static byte[] part(long edit, int part, List<Settled<?>> changes) throws IOException {
        return line(json -> {
            json.writeNumberField("part", part);
            json.writeNumberField("of", edit);
            changes(json, changes);
        });
    }

    static byte[] commit(long edit, int parts) throws IOException {
        return line(json -> {
            json.writeNumberField("commit", edit);
            json.writeNumberField("parts", parts);
        });
    }

    private interface Fields {
        void write(JsonGenerator json) throws IOException;
    }

    private static byte[] line(Fields fields) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(512);
        try (JsonGenerator json = JSON.createGenerator(bytes)) {
            json.writeStartObject();
            fields.write(json);
        }
        return bytes.toByteArray();
    }

    private static void head(JsonGenerator json, String what, EditHead head) throws IOException {
        json.writeNumberField(what, head.number());
        json.writeStringField("time", head.time().toString());
        json.writeStringField("author", writable("author", head.author()));
        json.writeStringField("reason", writable("reason", head.reason()));
        json.writeNumberField("records", head.records());
        if (head.takesBack().isPresent()) {
            json.writeNumberField("takes_back", head.takesBack().getAsLong());
        }
    }

    private static void changes(JsonGenerator json, List<Settled<?>> changes) throws IOException {
        json.writeArrayFieldStart("changes");
        for (Settled<?> change : changes) {
            change(json, change);
        }
        json.writeEndArray();
    }

    private static <T extends Record> void change(JsonGenerator json, Settled<T> change) throws IOException {
        json.writeStartObject();
        json.writeStringField("table", change.kind().table());
        json.writeNumberField("id", change.id());
        row(json, "before", change.kind(), change.before());
        row(json, "after", change.kind(), change.after());
        json.writeEndObject();
    }

    private static <T extends Record> void row(JsonGenerator json, String name, Kind<T> kind, Optional<T> row)
            throws IOException {
        if (row.isEmpty()) {
            return;
        }
        json.writeObjectFieldStart(name);
        for (Column column : kind.columns()) {
            String text = kind.cell(row.get(), column);
            if (!isWritable(text)) {
                throw new NotWritable(kind.table(), kind.keyOf(row.get()).orElse(""), column.name(), text);
            }
            if (!text.isEmpty()) {
                json.writeStringField(column.name(), text);
            }
        }
        json.writeEndObject();
    }

    private static String writable(String column, String text) {
        if (!isWritable(text)) {
            throw new NotWritable("history", "", column, text);
        }
        return text;
    }

    /** Whether UTF-8 can hold the text: each half of a character has its other half. */
    private static boolean isWritable(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isSurrogate(text.charAt(i))) {
                if (i + 1 == text.length() || !Character.isSurrogatePair(text.charAt(i), text.charAt(i + 1))) {
                    return false;
                }
                i++;
            }
        }
        return true;
    }
}
