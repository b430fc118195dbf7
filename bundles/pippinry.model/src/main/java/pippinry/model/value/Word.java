package pippinry.model.value;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** A fixed word of the plain tables; implemented by enums. */
public interface Word {

    /** The word as it is written in a table. */
    String word();

    static <E extends Enum<E> & Word> Optional<E> find(Class<E> type, String word) {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> constant.word().equals(word))
                .findFirst();
    }

    /** The words to choose from, for a message. */
    static <E extends Enum<E> & Word> String list(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Word::word).collect(Collectors.joining(", "));
    }
}
