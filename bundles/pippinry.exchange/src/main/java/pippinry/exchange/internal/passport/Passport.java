package pippinry.exchange.internal.passport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** One accession's passport while it is filled in; several values of a field are parted by semicolons without blanks. */
final class Passport {

    private final Map<Field, String> fields = new EnumMap<>(Field.class);
    private final List<String> remarks = new ArrayList<>();

    static List<String> header() {
        return Arrays.stream(Field.values()).map(Field::name).toList();
    }

    Passport put(Field field, String value) {
        fields.put(field, value);
        return this;
    }

    /** Several values; a semicolon inside one becomes a comma, for it would part it in two. */
    Passport put(Field field, List<String> values) {
        return put(field, String.join(";", values.stream().map(Passport::single).toList()));
    }

    static String single(String value) {
        return value.replace(';', ',').strip();
    }

    Passport remark(Field about, String words) {
        remarks.add(about + ":" + single(words));
        return this;
    }

    List<String> row() {
        fields.put(Field.REMARKS, String.join(";", remarks));
        return Arrays.stream(Field.values())
                .map(field -> fields.getOrDefault(field, ""))
                .toList();
    }
}
