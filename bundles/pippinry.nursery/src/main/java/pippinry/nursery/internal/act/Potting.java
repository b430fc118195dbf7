package pippinry.nursery.internal.act;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pippinry.model.Edit;
import pippinry.model.NextNumbers;
import pippinry.model.Program;
import pippinry.model.record.Certainty;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.record.GenotypeKind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantKind;
import pippinry.model.record.PlantStatus;
import pippinry.model.record.SeedLot;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;

/**
 * Seedlings of a lot move to pots of their own: each gets its number, and is from then on a plant on its own roots. A lot
 * without a cross gets a family of its own, so that its seedlings can be numbered.
 */
public record Potting(Code<SeedLot> lot, int count, LocalDate day) {

    private static final int MOST = 9_999;

    public Potting {
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException("How many are potted? A number from 1 to " + MOST);
        }
    }

    /** What it came to. */
    public record Plan(Edit edit, String family, NextNumbers.Given numbers) {}

    public Plan in(Program program, String author) throws NotPossible {
        SeedLot seeds = program.find(Kinds.SEEDLOTS, lot)
                .orElseThrow(() -> new NotPossible("There is no seed lot " + lot + " on file"));
        int potted = seeds.potted().orElse(0) + count;
        if (seeds.sown().isPresent() && potted > seeds.sown().getAsInt()) {
            throw new NotPossible("Of lot " + lot + " " + seeds.sown().getAsInt() + " seeds were sown; " + potted
                    + " cannot be potted. Count again, or correct what was sown");
        }
        NextNumbers next = new NextNumbers(program);
        String family = seeds.cross().map(Code::text).orElseGet(() -> next.cross(day.getYear()));
        NextNumbers.Given numbers = next.seedlings(family, count);
        Edit.Draft edit = Edit.by(author, count + " seedlings of lot " + lot + " potted");
        Optional<Cross> cross = seeds.cross().flatMap(code -> program.find(Kinds.CROSSES, code));
        if (cross.isEmpty()) {
            edit.put(Kinds.CROSSES, familyOf(seeds, family));
        }
        numbers.numbers().forEach(number -> add(program, edit, seeds, cross, number));
        edit.put(Kinds.SEEDLOTS, withPotted(seeds, family, potted));
        return new Plan(numbers.markSkipped(edit).done(), family, numbers);
    }

    private Cross familyOf(SeedLot seeds, String family) {
        return new Cross(
                Code.of(family),
                Optional.of(year(seeds)),
                Optional.empty(),
                PollenParent.unknown(),
                seeds.source().isBlank() ? "seed of unknown origin" : seeds.source(),
                OptionalInt.empty(),
                "");
    }

    private void add(Program program, Edit.Draft edit, SeedLot seeds, Optional<Cross> cross, String number) {
        Optional<Code<Genotype>> mother = cross.flatMap(Cross::seedParent);
        PollenParent<Genotype> father = cross.map(Cross::pollenParent).orElse(PollenParent.unknown());
        edit.put(
                Kinds.GENOTYPES,
                new Genotype(
                        Code.of(number),
                        "",
                        program.setting("crop").orElse(""),
                        Optional.of(GenotypeKind.SEEDLING),
                        OptionalInt.empty(),
                        mother,
                        father,
                        mother.map(any -> Certainty.SURE),
                        father.candidates().size() == 1 ? Optional.of(Certainty.SURE) : Optional.empty(),
                        mother.isPresent() ? "tag" : "",
                        Optional.empty(),
                        Optional.of(year(seeds)),
                        seeds.source(),
                        ""));
        edit.put(Kinds.PLANTS, plant(number));
    }

    private Plant plant(String number) {
        return new Plant(
                Code.of(number + "A"),
                Optional.of(Code.of(number)),
                Optional.of(PlantKind.OWN_ROOT),
                "",
                "",
                Optional.empty(),
                OptionalDouble.empty(),
                "",
                Optional.empty(),
                Optional.of(PartialDate.of(day)),
                Optional.of(PlantStatus.ALIVE),
                Optional.empty(),
                "",
                Optional.of(Certainty.SURE),
                "");
    }

    /** Seedlings are of the year in which they were sown. */
    private PartialDate year(SeedLot seeds) {
        LocalDate sown = seeds.sownOn().map(PartialDate::latest).orElse(day);
        return PartialDate.parse("%04d".formatted(sown.getYear()));
    }

    private static SeedLot withPotted(SeedLot seeds, String family, int potted) {
        return new SeedLot(
                seeds.code(),
                Optional.of(Code.of(family)),
                seeds.source(),
                seeds.harvestedOn(),
                seeds.fruits(),
                seeds.seedsFull(),
                seeds.seedsEmpty(),
                seeds.kept(),
                seeds.sownOn(),
                seeds.sown(),
                seeds.emerged(),
                OptionalInt.of(potted),
                seeds.note());
    }
}
