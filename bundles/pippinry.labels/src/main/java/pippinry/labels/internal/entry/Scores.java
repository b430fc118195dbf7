package pippinry.labels.internal.entry;

import java.util.Comparator;
import java.util.Optional;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Kinds;
import pippinry.model.record.Score;
import pippinry.model.value.PartialDate;
import pippinry.model.value.ScoreValue;
import pippinry.model.value.Subject;

/** Boxes of a score sheet become scores that carry sheet, date and scorer; a box has one score, also after a correction. */
final class Scores implements Writing {

    @Override
    public Optional<ScoreValue> known(Program program, Hand hand, String subject, String column) {
        return row(program, hand, subject, column).map(row -> row.value().value());
    }

    private static Optional<Row<Score>> row(Program program, Hand hand, String subject, String column) {
        return program.table(Kinds.SCORES).citing(subject).stream()
                .filter(row -> row.value().subject().text().equals(subject)
                        && row.value().trait().equals(column)
                        && row.value().sheet().equals(hand.sheet()))
                .max(Comparator.comparingInt(Row::id));
    }

    @Override
    public Optional<String> question(Program program, Hand hand, String subject, String column, ScoreValue value) {
        return Optional.empty();
    }

    @Override
    public void put(Edit.Draft edit, Program program, Hand hand, String subject, Box box, ScoreValue value) {
        Score score = new Score(
                new Subject(subject),
                box.code(),
                value,
                value.notSeen() ? "" : box.unit(),
                Optional.of(PartialDate.of(hand.day())),
                "",
                "",
                hand.scorer(),
                "",
                Optional.empty(),
                hand.sheet(),
                "");
        row(program, hand, subject, box.code())
                .ifPresentOrElse(
                        row -> edit.replace(Kinds.SCORES, row.id(), score), () -> edit.put(Kinds.SCORES, score));
    }
}
