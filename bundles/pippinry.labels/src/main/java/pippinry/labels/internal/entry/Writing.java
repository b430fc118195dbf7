package pippinry.labels.internal.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.value.ScoreValue;

/** To which record a box of a sheet belongs: a score, a visit to a branch, a count of a lot. */
interface Writing {

    /** @param day on which the sheet was filled in */
    record Hand(String sheet, LocalDate day, String scorer) {}

    /** What this sheet has put there already; empty while the box is blank. */
    Optional<ScoreValue> known(Program program, Hand hand, String subject, String column);

    /** Why the value is asked for once more; empty when the other records agree with it. */
    Optional<String> question(Program program, Hand hand, String subject, String column, ScoreValue value);

    /** Puts one value into the edit. */
    void put(Edit.Draft edit, Program program, Hand hand, String subject, Box box, ScoreValue value);

    /** Puts the values of a row into the edit, box by box. */
    default void putRow(
            Edit.Draft edit, Program program, Hand hand, String subject, List<Box> boxes, List<ScoreValue> values) {
        for (int i = 0; i < boxes.size(); i++) {
            put(edit, program, hand, subject, boxes.get(i), values.get(i));
        }
    }
}
