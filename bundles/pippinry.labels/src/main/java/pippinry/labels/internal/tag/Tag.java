package pippinry.labels.internal.tag;

import java.util.List;
import java.util.Optional;

/**
 * What one tag says.
 *
 * @param number the number a hand copies, such as {@code 26-014-073}
 * @param check its check character; empty on a tag that names no plant, such as a row end
 * @param lines small text, the most needed first
 */
public record Tag(String number, Optional<String> check, List<String> lines) {
    public Tag {
        if (number.isBlank()) {
            throw new IllegalArgumentException("A tag has a number");
        }
        lines = lines.stream()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** Number and check as a camera reads it: {@code 26-014-073=Y}; nothing else stands in the code. */
    public String code() {
        return number + ending();
    }

    /** The check after its equals sign, or nothing. */
    public String ending() {
        return check.map(character -> "=" + character).orElse("");
    }
}
