package pippinry.labels.internal.entry;

import java.util.Optional;
import pippinry.labels.internal.entry.Writing.Hand;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Note;
import pippinry.model.value.PartialDate;
import pippinry.model.value.ScoreValue;
import pippinry.model.value.Subject;

/** A count has no sign for not seen, and none may be zero: it is noted in words, so that nobody takes it for forgotten. */
final class NotSeen {

    private NotSeen() {}

    private static String words(Hand hand, String column) {
        return column.replace('_', ' ') + " not seen, sheet " + hand.sheet();
    }

    static Optional<ScoreValue> known(Program program, Hand hand, String subject, String column) {
        boolean noted = program.table(Kinds.NOTES).citing(subject).stream()
                .anyMatch(row -> row.value().text().equals(words(hand, column)));
        return noted ? Optional.of(ScoreValue.NOT_SEEN) : Optional.empty();
    }

    static void put(Edit.Draft edit, Hand hand, String subject, String column) {
        edit.put(
                Kinds.NOTES,
                new Note(new Subject(subject), Optional.of(PartialDate.of(hand.day())), words(hand, column)));
    }

    /** Seen after all. */
    static void drop(Edit.Draft edit, Program program, Hand hand, String subject, String column) {
        program.table(Kinds.NOTES).citing(subject).stream()
                .filter(row -> row.value().text().equals(words(hand, column)))
                .forEach(row -> edit.remove(Kinds.NOTES, row.id()));
    }

    static int count(ScoreValue value) {
        return (int) value.number().orElseThrow();
    }
}
