package pippinry.commandline.internal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;

/** Writes an answer's values as JSON. Numbers that JSON does not know, such as not-a-number, become null. */
final class JsonText {

    private JsonText() {}

    static String of(Map<String, ?> values) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter());
            write(json, values);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void write(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.writeFieldName(String.valueOf(entry.getKey()));
                write(json, entry.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof Iterable<?> list) {
            json.writeStartArray();
            for (Object each : list) {
                write(json, each);
            }
            json.writeEndArray();
        } else {
            writePlain(json, value);
        }
    }

    private static void writePlain(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Integer || value instanceof Long) {
            json.writeNumber(((Number) value).longValue());
        } else if (value instanceof Number number && Double.isFinite(number.doubleValue())) {
            json.writeNumber(number.doubleValue());
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value == null || value instanceof Number) {
            json.writeNull();
        } else {
            json.writeString(value.toString());
        }
    }
}
