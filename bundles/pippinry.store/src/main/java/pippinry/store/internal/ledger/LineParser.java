package pippinry.store.internal.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import pippinry.model.Settled;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.RowReader;

/** Reads the lines of a ledger. */
final class LineParser {

    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxStringLength(Integer.MAX_VALUE)
                    .build())
            .build();

    private final Map<Kind<?>, RowReader<?>> readers = new HashMap<>();

    /** Reads the line without its changes, which come last; so it costs the same however many there are. */
    Line head(byte[] line, int from, int to) throws IOException {
        return read(line, from, to, false);
    }

    /** @throws IOException if it is no line of ours, names a table that is none, or holds a value that does not fit */
    Line whole(byte[] line, int from, int to) throws IOException {
        return read(line, from, to, true);
    }

    private Line read(byte[] line, int from, int to, boolean withChanges) throws IOException {
        Line.Fields fields = new Line.Fields();
        try (JsonParser json = JSON.createParser(line, from, to - from)) {
            expect(json.nextToken(), JsonToken.START_OBJECT);
            for (String name = json.nextFieldName(); name != null; name = json.nextFieldName()) {
                json.nextToken();
                if (name.equals("changes") && !withChanges) {
                    break;
                }
                field(json, name, fields);
            }
        } catch (DateTimeException e) {
            throw new IOException("a time that is none", e);
        }
        return fields.line();
    }

    private void field(JsonParser json, String name, Line.Fields fields) throws IOException {
        switch (name) {
            case "edit" -> fields.edit = OptionalLong.of(json.getLongValue());
            case "begin" -> fields.begin = OptionalLong.of(json.getLongValue());
            case "commit" -> fields.commit = OptionalLong.of(json.getLongValue());
            case "takes_back" -> fields.takesBack = OptionalLong.of(json.getLongValue());
            case "time" -> fields.time = Instant.parse(json.getText());
            case "author" -> fields.author = json.getText();
            case "reason" -> fields.reason = json.getText();
            case "records" -> fields.records = json.getIntValue();
            case "part" -> fields.part = json.getIntValue();
            case "parts" -> fields.parts = json.getIntValue();
            case "of" -> fields.of = json.getLongValue();
            case "changes" -> fields.changes = changes(json);
            default -> headerField(json, name, fields);
        }
    }

    private static void headerField(JsonParser json, String name, Line.Fields fields) throws IOException {
        switch (name) {
            case "ledger" -> fields.ledger = json.getText();
            case "format" -> fields.format = json.getIntValue();
            case "segment" -> fields.segment = json.getIntValue();
            case "program" -> fields.program = json.getText();
            default -> json.skipChildren();
        }
    }

    private List<Settled<?>> changes(JsonParser json) throws IOException {
        expect(json.currentToken(), JsonToken.START_ARRAY);
        List<Settled<?>> changes = new ArrayList<>();
        while (json.nextToken() == JsonToken.START_OBJECT) {
            changes.add(change(json));
        }
        expect(json.currentToken(), JsonToken.END_ARRAY);
        return changes;
    }

    /** The table stands first, so that the rows can be read as they come. */
    private Settled<?> change(JsonParser json) throws IOException {
        expectName(json, "table");
        String table = json.nextTextValue();
        Kind<?> kind = Kinds.named(table).orElseThrow(() -> new IOException("there is no table " + table));
        return change(json, kind);
    }

    private <T extends Record> Settled<T> change(JsonParser json, Kind<T> kind) throws IOException {
        expectName(json, "id");
        int id = json.nextIntValue(-1);
        Optional<T> before = Optional.empty();
        Optional<T> after = Optional.empty();
        for (String name = json.nextFieldName(); name != null; name = json.nextFieldName()) {
            json.nextToken();
            Optional<T> row = Optional.of(row(json, kind));
            before = name.equals("before") ? row : before;
            after = name.equals("after") ? row : after;
        }
        return new Settled<>(kind, id, before, after);
    }

    private <T extends Record> T row(JsonParser json, Kind<T> kind) throws IOException {
        expect(json.currentToken(), JsonToken.START_OBJECT);
        RowReader<T> reader = reader(kind).begin();
        for (String column = json.nextFieldName(); column != null; column = json.nextFieldName()) {
            reader.set(column, json.nextTextValue());
        }
        try {
            return reader.read();
        } catch (CellRefused e) {
            throw new IOException("table " + kind.table() + ", " + e.getMessage(), e);
        }
    }

    @SuppressWarnings("unchecked")
    private <T extends Record> RowReader<T> reader(Kind<T> kind) {
        return (RowReader<T>) readers.computeIfAbsent(kind, RowReader::new);
    }

    private static void expectName(JsonParser json, String name) throws IOException {
        if (!name.equals(json.nextFieldName())) {
            throw new IOException("'" + name + "' is missing");
        }
    }

    private static void expect(JsonToken found, JsonToken wanted) throws IOException {
        if (found != wanted) {
            throw new IOException(wanted + " is missing");
        }
    }
}
