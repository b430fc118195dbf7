package pippinry.model.value;

import java.util.Optional;
import java.util.OptionalDouble;

/** What was seen: a number, a state's code or words - or {@link #NOT_SEEN}, which is a value of its own and never zero. */
public record ScoreValue(String text) {

    public static final ScoreValue NOT_SEEN = new ScoreValue("ns");

    public ScoreValue {
        if (text.isBlank() || !text.equals(text.strip())) {
            throw new IllegalArgumentException(
                    "a number, a state, words, or ns for not seen, without blanks around it");
        }
    }

    public static ScoreValue of(double number) {
        return new ScoreValue(Decimal.write(number));
    }

    public boolean notSeen() {
        return text.equals(NOT_SEEN.text);
    }

    /** Empty when it is not seen or not a number. */
    public OptionalDouble number() {
        try {
            return OptionalDouble.of(Decimal.read(text));
        } catch (IllegalArgumentException e) {
            return OptionalDouble.empty();
        }
    }

    /** The state or words; empty when it is not seen or a number. */
    public Optional<String> words() {
        return notSeen() || number().isPresent() ? Optional.empty() : Optional.of(text);
    }

    @Override
    public String toString() {
        return text;
    }
}
