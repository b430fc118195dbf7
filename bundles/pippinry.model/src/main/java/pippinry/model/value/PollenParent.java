package pippinry.model.value;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Who gave the pollen, as far as it is known: one genotype, one of several candidates ({@code A|B}), open pollination
 * ({@code op}), the seed parent itself ({@code self}), or unknown.
 *
 * @param candidates one code if it is known, several if one of them it must be, none otherwise; {@code T} is the genotype
 */
public record PollenParent<T>(How how, List<Code<T>> candidates) {

    /** What is known of the pollen. */
    public enum How implements Word {
        KNOWN("known"),
        CANDIDATES("candidates"),
        OPEN("op"),
        SELF("self"),
        UNKNOWN("unknown");

        private final String word;

        How(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    public PollenParent {
        candidates = List.copyOf(candidates);
        boolean fits =
                switch (how) {
                    case KNOWN -> candidates.size() == 1;
                    case CANDIDATES ->
                        candidates.size() > 1 && candidates.stream().distinct().count() == candidates.size();
                    default -> candidates.isEmpty();
                };
        if (!fits) {
            throw new IllegalArgumentException("a code, op, self, unknown, or different candidates as A|B|C");
        }
    }

    public static <T> PollenParent<T> unknown() {
        return new PollenParent<>(How.UNKNOWN, List.of());
    }

    public static <T> PollenParent<T> of(Code<T> parent) {
        return new PollenParent<>(How.KNOWN, List.of(parent));
    }

    /** @throws IllegalArgumentException if candidates are empty or repeated */
    public static <T> PollenParent<T> parse(String text) {
        return switch (text) {
            case "", "unknown" -> unknown();
            case "op" -> new PollenParent<>(How.OPEN, List.of());
            case "self" -> new PollenParent<>(How.SELF, List.of());
            default -> ofCodes(text);
        };
    }

    private static <T> PollenParent<T> ofCodes(String text) {
        List<Code<T>> codes = Arrays.stream(text.split("\\|", -1))
                .map(String::strip)
                .map(Code::<T>of)
                .toList();
        return new PollenParent<>(codes.size() == 1 ? How.KNOWN : How.CANDIDATES, codes);
    }

    @Override
    public String toString() {
        return candidates.isEmpty()
                ? how.word()
                : candidates.stream().map(Code::text).collect(Collectors.joining("|"));
    }
}
