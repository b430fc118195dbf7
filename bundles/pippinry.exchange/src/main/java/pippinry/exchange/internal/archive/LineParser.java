package pippinry.exchange.internal.archive;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import pippinry.model.Row;
import pippinry.model.Settled;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Reads one line of an archive. */
final class LineParser {

    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxStringLength(Integer.MAX_VALUE)
                    .build())
            .build();

    private LineParser() {}

    /** The fields of a line before it is clear what they make; cells by the name of the object they stand in. */
    private static final class Fields {

        private final Map<String, String> plain = new HashMap<>();
        private final Map<String, Map<String, String>> cells = new HashMap<>();

        String text(String name) throws IOException {
            String text = plain.get(name);
            if (text == null) {
                throw new IOException("'" + name + "' is missing");
            }
            return text;
        }

        long number(String name) throws IOException {
            try {
                return Long.parseLong(text(name));
            } catch (NumberFormatException e) {
                throw new IOException("'" + name + "' is '" + text(name) + "' and not a whole number", e);
            }
        }

        OptionalLong perhaps(String name) throws IOException {
            return plain.containsKey(name) ? OptionalLong.of(number(name)) : OptionalLong.empty();
        }

        boolean has(String name) {
            return plain.containsKey(name);
        }
    }

    static ArchiveHead head(String line) throws IOException {
        Fields fields = fields(line);
        return new ArchiveHead(
                fields.text("format"), (int) fields.number("version"), fields.text("program"), fields.number("edits"));
    }

    static ArchiveLine line(String line) throws IOException, CellRefused {
        Fields fields = fields(line);
        if (fields.has("edit")) {
            return edited(fields);
        }
        Kind<?> kind = Kinds.named(fields.text("table"))
                .orElseThrow(() -> new IOException("'" + fields.plain.get("table") + "' is no table"));
        return fields.has("of") ? changed(fields, kind) : standing(fields, kind);
    }

    private static ArchiveLine edited(Fields fields) throws IOException {
        return new ArchiveLine.Edited(
                fields.number("edit"),
                time(fields.text("time")),
                fields.text("author"),
                fields.text("reason"),
                (int) fields.number("records"),
                fields.perhaps("takes_back"));
    }

    private static Instant time(String text) throws IOException {
        try {
            return Instant.parse(text);
        } catch (java.time.DateTimeException e) {
            throw new IOException("'time' is '" + text + "', which is no time such as 2026-03-27T10:00:00Z", e);
        }
    }

    private static <T extends Record> ArchiveLine standing(Fields fields, Kind<T> kind)
            throws IOException, CellRefused {
        T row = row(fields, "row", kind).orElseThrow(() -> new IOException("'row' is missing"));
        return new ArchiveLine.Standing<>(kind, new Row<>((int) fields.number("id"), row));
    }

    private static <T extends Record> ArchiveLine changed(Fields fields, Kind<T> kind) throws IOException, CellRefused {
        return new ArchiveLine.Changed(
                fields.number("of"),
                new Settled<>(
                        kind, (int) fields.number("id"), row(fields, "before", kind), row(fields, "after", kind)));
    }

    private static <T extends Record> Optional<T> row(Fields fields, String name, Kind<T> kind)
            throws IOException, CellRefused {
        Map<String, String> cells = fields.cells.get(name);
        if (cells == null) {
            return Optional.empty();
        }
        for (String column : cells.keySet()) {
            if (kind.columns().stream().map(Column::name).noneMatch(column::equals)) {
                throw new IOException("'" + column + "' is no column of " + kind.table());
            }
        }
        return Optional.of(kind.read(column -> cells.getOrDefault(column, "")));
    }

    private static Fields fields(String line) throws IOException {
        Fields fields = new Fields();
        try (JsonParser json = JSON.createParser(line)) {
            expectObject(json.nextToken());
            for (String name = json.nextFieldName(); name != null; name = json.nextFieldName()) {
                if (json.nextToken() == JsonToken.START_OBJECT) {
                    fields.cells.put(name, texts(json));
                } else {
                    fields.plain.put(name, json.getText());
                }
            }
            if (json.nextToken() != null) {
                throw new IOException("more than one JSON object");
            }
        }
        return fields;
    }

    private static void expectObject(JsonToken token) throws IOException {
        if (token != JsonToken.START_OBJECT) {
            throw new IOException("no JSON object");
        }
    }

    private static Map<String, String> texts(JsonParser json) throws IOException {
        Map<String, String> texts = new HashMap<>();
        for (String name = json.nextFieldName(); name != null; name = json.nextFieldName()) {
            if (json.nextToken() != JsonToken.VALUE_STRING) {
                throw new IOException("'" + name + "' is no text");
            }
            texts.put(name, json.getText());
        }
        return texts;
    }
}
