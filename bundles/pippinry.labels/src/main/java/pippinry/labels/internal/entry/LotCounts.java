package pippinry.labels.internal.entry;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Emergence;
import pippinry.model.record.Kinds;
import pippinry.model.record.SeedLot;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.ScoreValue;

/** Boxes of a count sheet for seed lots: seedlings up in all become a count of that day, pots stand with the lot. */
final class LotCounts implements Writing {

    private static final String EMERGED = "emerged";
    private static final String POTTED = "potted";

    @Override
    public Optional<ScoreValue> known(Program program, Hand hand, String subject, String column) {
        OptionalInt counted = column.equals(EMERGED) ? emerged(program, hand, subject) : OptionalInt.empty();
        return counted.isPresent()
                ? Optional.of(ScoreValue.of(counted.getAsInt()))
                : NotSeen.known(program, hand, subject, column);
    }

    private static OptionalInt emerged(Program program, Hand hand, String subject) {
        Optional<PartialDate> day = Optional.of(PartialDate.of(hand.day()));
        return program.table(Kinds.EMERGENCE).citing(subject).stream()
                .map(Row::value)
                .filter(count ->
                        count.lot().text().equals(subject) && count.date().equals(day))
                .map(Emergence::emerged)
                .findFirst()
                .orElse(OptionalInt.empty());
    }

    @Override
    public Optional<String> question(Program program, Hand hand, String subject, String column, ScoreValue value) {
        SeedLot lot = lot(program, subject);
        boolean potting = column.equals(POTTED);
        OptionalInt most = potting && lot.emerged().isPresent() ? lot.emerged() : lot.sown();
        String of = potting && lot.emerged().isPresent() ? EMERGED : "sown";
        return most.isPresent() && value.number().orElse(0) > most.getAsInt()
                ? Optional.of(column + " " + value + " is more than " + of + " " + most.getAsInt())
                : Optional.empty();
    }

    private static SeedLot lot(Program program, String subject) {
        return program.find(Kinds.SEEDLOTS, Code.<SeedLot>of(subject)).orElseThrow();
    }

    @Override
    public void put(Edit.Draft edit, Program program, Hand hand, String subject, Box box, ScoreValue value) {
        if (value.notSeen()) {
            NotSeen.put(edit, hand, subject, box.code());
            return;
        }
        NotSeen.drop(edit, program, hand, subject, box.code());
        OptionalInt count = OptionalInt.of(NotSeen.count(value));
        if (box.code().equals(EMERGED)) {
            PartialDate day = PartialDate.of(hand.day());
            edit.put(Kinds.EMERGENCE, new Emergence(Code.of(subject), Optional.of(day), count));
        } else if (box.code().equals(POTTED)) {
            edit.put(Kinds.SEEDLOTS, potted(lot(program, subject), count));
        } else {
            throw new IllegalArgumentException("'" + box.code() + "' is not counted in seed lots");
        }
    }

    private static SeedLot potted(SeedLot lot, OptionalInt count) {
        return new SeedLot(
                lot.code(),
                lot.cross(),
                lot.source(),
                lot.harvestedOn(),
                lot.fruits(),
                lot.seedsFull(),
                lot.seedsEmpty(),
                lot.kept(),
                lot.sownOn(),
                lot.sown(),
                lot.emerged(),
                count,
                lot.note());
    }
}
