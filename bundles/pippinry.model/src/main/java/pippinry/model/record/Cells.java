package pippinry.model.record;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import pippinry.model.value.Code;
import pippinry.model.value.Decimal;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;
import pippinry.model.value.ScoreValue;
import pippinry.model.value.Subject;
import pippinry.model.value.Word;

/** The cell of each type that a record may hold. */
final class Cells {

    private static final Map<Class<?>, Cell<?>> PLAIN = Map.of(
            String.class, new Cell<String>(text -> text, text -> text),
            Code.class, new Cell<Code<?>>(Code::of, Code::text),
            Subject.class, new Cell<>(Subject::new, Subject::text),
            PartialDate.class, new Cell<>(PartialDate::parse, PartialDate::toString),
            ScoreValue.class, new Cell<>(ScoreValue::new, ScoreValue::text),
            PollenParent.class, new Cell<PollenParent<?>>(PollenParent::parse, Cells::writePollen),
            OptionalInt.class, new Cell<>(Cells::readInt, Cells::writeInt),
            OptionalDouble.class, new Cell<>(Cells::readDouble, Cells::writeDouble));

    private Cells() {}

    static Cell<?> of(Type type) {
        if (type instanceof ParameterizedType generic && generic.getRawType() == Optional.class) {
            return optional(of(generic.getActualTypeArguments()[0]));
        }
        Class<?> raw = raw(type);
        if (raw.isEnum()) {
            return word(raw);
        }
        Cell<?> cell = PLAIN.get(raw);
        if (cell == null) {
            throw new IllegalArgumentException("No plain table can hold a " + type);
        }
        return cell;
    }

    static Class<?> raw(Type type) {
        return type instanceof ParameterizedType generic ? (Class<?>) generic.getRawType() : (Class<?>) type;
    }

    private static <V> Cell<Optional<V>> optional(Cell<V> some) {
        return new Cell<>(
                text -> text.isEmpty()
                        ? Optional.empty()
                        : Optional.of(some.read().apply(text)),
                value -> value.map(some.write()).orElse(""));
    }

    private static Cell<Word> word(Class<?> type) {
        Function<String, Word> read = text -> {
            for (Object constant : type.getEnumConstants()) {
                if (((Word) constant).word().equals(text)) {
                    return (Word) constant;
                }
            }
            throw new IllegalArgumentException("one of: " + words(type));
        };
        return new Cell<>(read, Word::word);
    }

    private static String words(Class<?> type) {
        StringBuilder words = new StringBuilder();
        for (Object constant : type.getEnumConstants()) {
            words.append(words.isEmpty() ? "" : ", ").append(((Word) constant).word());
        }
        return words.toString();
    }

    private static String writePollen(PollenParent<?> parent) {
        return parent.how() == PollenParent.How.UNKNOWN ? "" : parent.toString();
    }

    private static OptionalInt readInt(String text) {
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        try {
            return OptionalInt.of(Integer.parseInt(text));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("a whole number", e);
        }
    }

    private static String writeInt(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    private static OptionalDouble readDouble(String text) {
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Decimal.read(text));
    }

    private static String writeDouble(OptionalDouble number) {
        return number.isPresent() ? Decimal.write(number.getAsDouble()) : "";
    }
}
