package pippinry.labels.internal.entry;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Done;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.record.Visit;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.ScoreValue;

/** Boxes of a count sheet for branches become visits; the branch keeps its flowers, fruits set and fruits picked too. */
final class Visits implements Writing {

    /** What may not be more than what: fruits come from flowers, and fewer are left each time. */
    private static final List<Done> FALLING = List.of(Done.SET, Done.JUNE, Done.HARVEST);

    @Override
    public Optional<ScoreValue> known(Program program, Hand hand, String subject, String column) {
        Optional<ScoreValue> counted = visits(program, subject, did(column))
                .filter(visit -> visit.note().equals(note(hand)))
                .reduce((earlier, later) -> later)
                .flatMap(visit -> visit.count().isPresent()
                        ? Optional.of(ScoreValue.of(visit.count().getAsInt()))
                        : Optional.empty());
        return counted.or(() -> NotSeen.known(program, hand, subject, column));
    }

    private static String note(Hand hand) {
        return "sheet " + hand.sheet();
    }

    private static Done did(String column) {
        return List.of(Done.values()).stream()
                .filter(done -> done.word().equals(column))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + column + "' is not counted on branches"));
    }

    private static Stream<Visit> visits(Program program, String subject, Done did) {
        return program.table(Kinds.VISITS).citing(subject).stream()
                .map(Row::value)
                .filter(visit -> visit.pollination().text().equals(subject)
                        && visit.did().equals(Optional.of(did)))
                .sorted(Comparator.comparing(
                        visit -> visit.time().map(PartialDate::earliest).orElse(LocalDate.MIN)));
    }

    @Override
    public Optional<String> question(Program program, Hand hand, String subject, String column, ScoreValue value) {
        int at = FALLING.indexOf(did(column));
        OptionalInt before = OptionalInt.empty();
        String of = "";
        for (int i = at - 1; i >= 0 && before.isEmpty(); i--) {
            of = FALLING.get(i).word();
            before = count(program, subject, FALLING.get(i));
        }
        if (at >= 0 && before.isEmpty()) {
            of = "flowers";
            before = branch(program, subject).flowers();
        }
        return before.isPresent() && value.number().orElse(0) > before.getAsInt()
                ? Optional.of(column + " " + value + " is more than " + of + " " + before.getAsInt())
                : Optional.empty();
    }

    private static OptionalInt count(Program program, String subject, Done did) {
        return visits(program, subject, did)
                .map(Visit::count)
                .filter(OptionalInt::isPresent)
                .reduce((earlier, later) -> later)
                .orElse(OptionalInt.empty());
    }

    private static Pollination branch(Program program, String subject) {
        return program.find(Kinds.POLLINATIONS, Code.<Pollination>of(subject)).orElseThrow();
    }

    @Override
    public void put(Edit.Draft edit, Program program, Hand hand, String subject, Box box, ScoreValue value) {
        if (value.notSeen()) {
            NotSeen.put(edit, hand, subject, box.code());
            return;
        }
        NotSeen.drop(edit, program, hand, subject, box.code());
        edit.put(
                Kinds.VISITS,
                new Visit(
                        Code.of(subject),
                        Optional.of(PartialDate.of(hand.day())),
                        Optional.of(did(box.code())),
                        OptionalInt.of(NotSeen.count(value)),
                        Optional.empty(),
                        hand.scorer(),
                        "",
                        note(hand)));
    }

    @Override
    public void putRow(
            Edit.Draft edit, Program program, Hand hand, String subject, List<Box> boxes, List<ScoreValue> values) {
        Writing.super.putRow(edit, program, hand, subject, boxes, values);
        keepTotals(edit, program, subject, boxes, values);
    }

    /** The branch after all counts of its row. */
    private static void keepTotals(
            Edit.Draft edit, Program program, String subject, List<Box> boxes, List<ScoreValue> values) {
        Pollination before = branch(program, subject);
        Pollination after = before;
        for (int i = 0; i < boxes.size(); i++) {
            if (!values.get(i).notSeen()) {
                after = with(after, did(boxes.get(i).code()), NotSeen.count(values.get(i)));
            }
        }
        if (!after.equals(before)) {
            edit.put(Kinds.POLLINATIONS, after);
        }
    }

    private static Pollination with(Pollination branch, Done did, int count) {
        OptionalInt counted = OptionalInt.of(count);
        boolean first = branch.flowers().isEmpty() && did == Done.POLLINATED;
        return new Pollination(
                branch.tag(),
                branch.cross(),
                branch.plant(),
                branch.kind(),
                first ? counted : branch.flowers(),
                did == Done.SET ? counted : branch.setFruits(),
                did == Done.HARVEST ? counted : branch.harvestedFruits(),
                branch.lossCause(),
                branch.note());
    }
}
