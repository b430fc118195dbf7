package pippinry.labels.internal.entry;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import pippinry.model.record.OwnTrait;
import pippinry.model.value.Decimal;
import pippinry.model.value.ScoreValue;
import pippinry.traits.TraitDefinition;
import pippinry.traits.TraitScale;
import pippinry.traits.TraitState;

/**
 * What may stand in the boxes of one column.
 *
 * @param code the trait or count as it is filed
 * @param name as a person reads it
 * @param scale empty when any words may stand there
 * @param low hard limits; beyond them a value is refused
 * @param plausibleLow beyond these it is asked for once more
 */
public record Box(
        String code,
        String name,
        Optional<TraitScale> scale,
        List<TraitState> states,
        OptionalDouble low,
        OptionalDouble high,
        OptionalDouble plausibleLow,
        OptionalDouble plausibleHigh,
        String unit) {

    private static final double MOST_COUNTED = 1_000_000;

    public Box {
        states = List.copyOf(states);
    }

    /**
     * A value that can be meant.
     *
     * @param question why it is asked for once more; empty when it is plausible
     */
    public record Typed(ScoreValue value, Optional<String> question) {}

    static Box of(TraitDefinition trait) {
        return new Box(
                trait.code(),
                trait.name(),
                Optional.of(trait.scale()),
                trait.states(),
                trait.low(),
                trait.high(),
                trait.plausibleLow(),
                trait.plausibleHigh(),
                trait.unit());
    }

    /** Limits of a person's own trait are taken as plausible ones: who drew them may have meant no more. */
    static Box of(OwnTrait trait) {
        List<TraitState> states = trait.states().isBlank()
                ? List.of()
                : List.of(trait.states().split("\\|")).stream().map(Box::state).toList();
        return new Box(
                trait.code().text(),
                trait.name().isBlank() ? trait.code().text() : trait.name(),
                ownScale(trait, states),
                states,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                trait.low(),
                trait.high(),
                trait.unit());
    }

    private static TraitState state(String text) {
        String[] parts = text.strip().split("\\s+", 2);
        return new TraitState(parts[0], parts.length > 1 ? parts[1] : parts[0]);
    }

    private static Optional<TraitScale> ownScale(OwnTrait trait, List<TraitState> states) {
        Optional<TraitScale> told = List.of(TraitScale.values()).stream()
                .filter(scale -> scale.word().equalsIgnoreCase(trait.scale()))
                .findFirst();
        if (told.isPresent()) {
            return told;
        }
        boolean isMeasured = trait.low().isPresent()
                || trait.high().isPresent()
                || !trait.unit().isBlank();
        if (!states.isEmpty()) {
            return Optional.of(isMeasured ? TraitScale.NOTE : TraitScale.STATE);
        }
        return isMeasured ? Optional.of(TraitScale.NUMBER) : Optional.empty();
    }

    static Box count(String code) {
        return new Box(
                code,
                code.replace('_', ' '),
                Optional.of(TraitScale.COUNT),
                List.of(),
                OptionalDouble.of(0),
                OptionalDouble.of(MOST_COUNTED),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "");
    }

    /** Reads one value. */
    public Typed read(String typed) throws NotTaken {
        if (typed.equalsIgnoreCase(ScoreValue.NOT_SEEN.text())) {
            return new Typed(ScoreValue.NOT_SEEN, Optional.empty());
        }
        Optional<TraitState> state = state(typed, states);
        if (state.isPresent()) {
            return new Typed(new ScoreValue(state.get().code()), Optional.empty());
        }
        if (scale.isEmpty()) {
            return new Typed(new ScoreValue(typed), Optional.empty());
        }
        if (scale.get() == TraitScale.STATE) {
            throw wrong(typed);
        }
        return number(typed);
    }

    /** By its code, else by the word that no other state begins with. */
    private static Optional<TraitState> state(String typed, List<TraitState> states) {
        Optional<TraitState> byCode = states.stream()
                .filter(state -> state.code().equalsIgnoreCase(typed))
                .findFirst();
        String word = typed.toLowerCase(Locale.ROOT);
        List<TraitState> byWord = states.stream()
                .filter(state -> state.meaning().toLowerCase(Locale.ROOT).startsWith(word))
                .toList();
        Optional<TraitState> whole = byWord.stream()
                .filter(state -> state.meaning().equalsIgnoreCase(typed))
                .findFirst();
        return byCode.or(() -> whole).or(() -> byWord.size() == 1 ? Optional.of(byWord.get(0)) : Optional.empty());
    }

    private Typed number(String typed) throws NotTaken {
        double number = amount(typed);
        boolean isWhole = number == Math.rint(number);
        if ((scale.get() == TraitScale.COUNT || scale.get() == TraitScale.DAY) && !isWhole
                || number < low.orElse(Double.NEGATIVE_INFINITY)
                || number > high.orElse(Double.POSITIVE_INFINITY)) {
            throw wrong(typed);
        }
        boolean odd = number < plausibleLow.orElse(Double.NEGATIVE_INFINITY)
                || number > plausibleHigh.orElse(Double.POSITIVE_INFINITY);
        return new Typed(
                ScoreValue.of(number),
                odd ? Optional.of(code + " " + typed + " is unusual: " + expected(true)) : Optional.empty());
    }

    private double amount(String typed) throws NotTaken {
        try {
            if (scale.get() == TraitScale.DAY && typed.contains("-")) {
                return LocalDate.parse(typed).getDayOfYear();
            }
            // A comma is how most of Europe writes the point; no thousands are parted on a sheet.
            return Decimal.read(typed.indexOf('.') < 0 ? typed.replaceFirst(",", ".") : typed);
        } catch (IllegalArgumentException | DateTimeParseException e) {
            throw wrong(typed);
        }
    }

    private NotTaken wrong(String typed) {
        return new NotTaken(code + " '" + typed + "': expected " + expected(false) + ", or ns for not seen");
    }

    /** What is expected, in words. */
    public String expected(boolean usually) {
        String named = states.stream()
                .map(state -> state.code() + " " + state.meaning())
                .collect(Collectors.joining("; "));
        String sort = scale.map(Box::sort).orElse("words");
        String limits = usually ? span(plausibleLow, plausibleHigh) : span(low, high);
        String number = sort + limits + (unit.isBlank() ? "" : " in " + unit);
        if (named.isEmpty()) {
            return number;
        }
        return scale.equals(Optional.of(TraitScale.STATE)) ? "one of " + named : number + " (" + named + ")";
    }

    private static String sort(TraitScale scale) {
        return switch (scale) {
            case NOTE -> "a note";
            case STATE -> "a state";
            case NUMBER -> "a number";
            case COUNT -> "a whole number";
            case DAY -> "a day of the year or a date as 2026-09-14";
        };
    }

    private static String span(OptionalDouble from, OptionalDouble to) {
        if (from.isEmpty() && to.isEmpty()) {
            return "";
        }
        if (to.isEmpty()) {
            return " from " + Decimal.write(from.getAsDouble());
        }
        return from.isEmpty()
                ? " up to " + Decimal.write(to.getAsDouble())
                : " from " + Decimal.write(from.getAsDouble()) + " to " + Decimal.write(to.getAsDouble());
    }
}
