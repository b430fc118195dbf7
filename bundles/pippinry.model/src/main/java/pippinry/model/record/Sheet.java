package pippinry.model.record;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/**
 * A printed score or count sheet and its rows in walking order, so that entry follows the paper.
 *
 * @param traits codes of its columns from left to right, or of what is counted, joined by {@code |}
 * @param subjects codes of its rows in walking order, joined by {@code |}
 */
public record Sheet(
        @Needed Code<Sheet> sheet,
        Optional<PartialDate> date,
        String person,
        String block,
        String traits,
        String subjects,
        String note) {

    private static final String BETWEEN = "|";

    /** The text of a cell that holds these codes in their order. */
    public static String joined(Collection<String> codes) {
        codes.stream().filter(code -> code.contains(BETWEEN)).findFirst().ifPresent(code -> {
            throw new IllegalArgumentException("a code without |, not " + code);
        });
        return String.join(BETWEEN, codes);
    }

    /** The columns from left to right. */
    public List<String> traitList() {
        return parted(traits);
    }

    /** The rows in walking order. */
    public List<String> subjectList() {
        return parted(subjects);
    }

    private static List<String> parted(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split("\\|"));
    }
}
