package pippinry.nursery.internal.act;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.LotMove;
import pippinry.model.record.SeedLot;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.seed.LotSeeds;

/**
 * Seeds go from one lot into another: into a new one when a lot is split in two places, into one that is there when lots are
 * put together. Seeds of two crosses are put together only on purpose, and the mixture then has no cross any more, for nobody
 * can tell its seedlings apart.
 *
 * @param kept how a new lot is kept, such as {@code damp sand}; empty as the old one
 * @param mixed whether seeds of another cross may go in
 */
public record MovingSeed(Code<SeedLot> from, Code<SeedLot> to, int seeds, LocalDate day, String kept, boolean mixed) {

    public MovingSeed {
        if (seeds < 1) {
            throw new IllegalArgumentException("How many seeds? A number from 1");
        }
        if (from.equals(to)) {
            throw new IllegalArgumentException("Seeds move from one lot into another, not into the same");
        }
    }

    public Edit in(Program program, String author) throws NotPossible {
        SeedLot source = program.find(Kinds.SEEDLOTS, from)
                .orElseThrow(() -> new NotPossible("There is no seed lot " + from + " on file"));
        if (source.sown().orElse(0) > 0 || source.sownOn().isPresent()) {
            throw new NotPossible("Lot " + from + " is sown; its seeds are in the soil");
        }
        OptionalInt there = LotSeeds.of(program, source);
        if (there.isPresent() && there.getAsInt() < seeds) {
            throw new NotPossible("Lot " + from + " holds " + there.getAsInt() + " full seeds, not " + seeds);
        }
        Edit.Draft edit = Edit.by(author, seeds + " seeds of " + from + " to " + to);
        Optional<SeedLot> target = program.find(Kinds.SEEDLOTS, to);
        edit.put(Kinds.SEEDLOTS, target.isPresent() ? joined(source, target.get()) : part(source));
        edit.put(
                Kinds.LOTMOVES,
                new LotMove(from, Optional.of(to), Optional.of(PartialDate.of(day)), OptionalInt.of(seeds)));
        return edit.done();
    }

    private SeedLot part(SeedLot source) {
        return lot(source, to, source.cross(), "part of " + from, kept.isBlank() ? source.kept() : kept);
    }

    private SeedLot joined(SeedLot source, SeedLot target) throws NotPossible {
        if (target.cross().equals(source.cross())) {
            return target;
        }
        if (!mixed) {
            throw new NotPossible("Lot " + to + " is of " + name(target) + " and lot " + from + " of " + name(source)
                    + ": nobody could tell their seedlings apart. Say that it is mixed if it must be");
        }
        String sources = "mixed: " + name(target) + ", " + name(source);
        return new SeedLot(
                to,
                Optional.empty(),
                sources,
                target.harvestedOn(),
                target.fruits(),
                target.seedsFull(),
                target.seedsEmpty(),
                target.kept(),
                target.sownOn(),
                target.sown(),
                target.emerged(),
                target.potted(),
                target.note());
    }

    private static String name(SeedLot lot) {
        return lot.cross().map(Code::text).orElse(lot.source().isBlank() ? "unknown origin" : lot.source());
    }

    private static SeedLot lot(
            SeedLot source,
            Code<SeedLot> code,
            Optional<Code<pippinry.model.record.Cross>> cross,
            String from,
            String kept) {
        return new SeedLot(
                code,
                cross,
                from,
                source.harvestedOn(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                kept,
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                "");
    }
}
