package pippinry.exchange.internal;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import pippinry.model.Edit;
import pippinry.model.Subjects;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;
import pippinry.model.value.ScoreValue;
import pippinry.model.value.Subject;
import pippinry.model.value.Word;

/** Records of every kind with random, awkward and valid values; the same seed gives the same ones. */
public final class GeneratedProgram {

    private static final String[] AWKWARD = {
        "",
        "",
        "",
        "plain",
        "two words",
        " blank before",
        "blank after ",
        "a,b",
        "\"quoted\"",
        "\"",
        "\"\"",
        "a\nb",
        "a\r\nb",
        "\r",
        "\n",
        "=1+1",
        "+2",
        "-3",
        "@x",
        "\ttab",
        "'",
        "ü ß ø",
        "Åkerö",
        "梨",
        "\uD83C\uDF4E",
        "a;b",
        "#",
        "\\",
        "\\n",
        "null",
        "0012",
        "1e3",
        ",",
        ",,",
        "\u00a0",
        "\u2028",
        "\ufeffmark",
        "a=b",
        "x|y"
    };

    private final Random random;
    private final Map<Class<?>, List<String>> codes = new HashMap<>();
    private final List<String> subjects = new ArrayList<>();
    private int number;

    public GeneratedProgram(long seed) {
        this.random = new Random(seed);
    }

    /** An edit with some records of every kind. */
    public Edit edit(int ofEach) {
        Edit.Draft draft = Edit.by("IN", "generated");
        Kinds.ALL.forEach(kind -> put(draft, kind, ofEach));
        return draft.done();
    }

    private <T extends Record> void put(Edit.Draft draft, Kind<T> kind, int ofEach) {
        java.util.Set<String> keys = new java.util.HashSet<>();
        for (int i = 0; i < ofEach; i++) {
            T row = row(kind);
            Optional<String> key = kind.keyOf(row);
            if (key.isEmpty() || keys.add(key.get())) {
                draft.put(kind, row);
                key.filter(any -> Subjects.mayBe(kind)).ifPresent(subjects::add);
                key.ifPresent(code -> codes.computeIfAbsent(kind.type(), any -> new ArrayList<>())
                        .add(code));
            }
        }
    }

    public <T extends Record> T row(Kind<T> kind) {
        for (int tries = 0; tries < 10_000; tries++) {
            Map<String, String> cells = new HashMap<>();
            for (int i = 0; i < kind.columns().size(); i++) {
                cells.put(kind.columns().get(i).name(), cell(kind, i));
            }
            try {
                return kind.read(cells::get);
            } catch (CellRefused e) {
                // Another throw of the dice.
            }
        }
        throw new IllegalStateException("No valid row of " + kind);
    }

    private String cell(Kind<?> kind, int index) {
        Column column = kind.columns().get(index);
        RecordComponent component = kind.type().getRecordComponents()[index];
        Type type = component.getGenericType();
        boolean optional = type instanceof ParameterizedType some && some.getRawType() == Optional.class;
        if (optional && random.nextInt(3) == 0) {
            return "";
        }
        Type inner = optional ? ((ParameterizedType) type).getActualTypeArguments()[0] : type;
        Class<?> raw = inner instanceof ParameterizedType some ? (Class<?>) some.getRawType() : (Class<?>) inner;
        if (raw == String.class) {
            return column.needed() || kind.key().contains(column) ? "t" + random.nextInt(100_000) : pick(AWKWARD);
        }
        return raw == Code.class ? code(column) : typed(raw);
    }

    private String typed(Class<?> type) {
        if (type.isEnum()) {
            return ((Word) pick(type.getEnumConstants())).word();
        }
        if (type == Subject.class) {
            return pick(subjects.toArray(String[]::new));
        }
        if (type == PartialDate.class) {
            return date();
        }
        if (type == ScoreValue.class) {
            return pick(new String[] {"ns", "3", "-2.5", "12.50", "1e3", "red, then green", "\"x\"", "=1"});
        }
        if (type == PollenParent.class) {
            return pollen();
        }
        if (type == OptionalInt.class) {
            return random.nextBoolean() ? "" : Integer.toString(random.nextInt(9));
        }
        if (type == OptionalDouble.class) {
            return random.nextBoolean()
                    ? ""
                    : Double.toString(random.nextGaussian() * Math.pow(10, random.nextInt(9) - 6));
        }
        throw new IllegalStateException("No cell of " + type);
    }

    private String code(Column column) {
        if (column.cites().isEmpty()) {
            return fresh();
        }
        List<String> known = codes.getOrDefault(column.cites().get(), List.of());
        return known.isEmpty() ? "" : known.get(random.nextInt(known.size()));
    }

    private String fresh() {
        String code = pick(new String[] {"26-", "T-", "Ö", "x y"}) + ++number;
        boolean star = CheckCharacter.isReckonable(code) && CheckCharacter.of(code) == CheckCharacter.STAR;
        return star ? fresh() : code;
    }

    private String pollen() {
        List<String> known = codes.getOrDefault(pippinry.model.record.Genotype.class, List.of());
        return switch (random.nextInt(5)) {
            case 0 -> "op";
            case 1 -> "self";
            case 2 -> known.size() < 2 ? "" : known.get(0) + "|" + known.get(known.size() - 1);
            case 3 -> known.isEmpty() ? "" : known.get(random.nextInt(known.size()));
            default -> "unknown";
        };
    }

    private String date() {
        String year = Integer.toString(1990 + random.nextInt(40));
        return switch (random.nextInt(5)) {
            case 0 -> year;
            case 1 -> "about " + year;
            case 2 -> year + "-%02d".formatted(1 + random.nextInt(12));
            case 3 ->
                year + "-02-%02dT%02d:%02d".formatted(1 + random.nextInt(28), random.nextInt(24), random.nextInt(60));
            default -> year + "-%02d-%02d".formatted(1 + random.nextInt(12), 1 + random.nextInt(30));
        };
    }

    private <V> V pick(V[] some) {
        return some[random.nextInt(some.length)];
    }
}
