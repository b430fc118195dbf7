package pippinry.nursery.internal.start;

import java.time.Year;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pippinry.model.Edit;
import pippinry.model.NextNumbers;
import pippinry.model.Program;
import pippinry.model.record.Block;
import pippinry.model.record.Certainty;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.record.GenotypeKind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantKind;
import pippinry.model.record.PlantStatus;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;

/**
 * Puts seedlings on file that stood there before the program: a family by its mother, numbers without stars, each plant
 * in its place of a row.
 *
 * @param mother name or number, empty if unknown
 * @param bought whether the seed came out of a bought apple
 * @param year in which they were sown
 * @param count how many stand there
 * @param row where; empty if they stand in no row yet
 */
public record SeedlingsOnHand(String mother, boolean bought, int year, int count, String row) {

    /** The block that rows belong to as long as there is no other. */
    static final String HOME = "HOME";

    private static final int MOST = 9_999;

    public SeedlingsOnHand {
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException("How many? A number from 1 to " + MOST);
        }
        if (year < 1900 || year > Year.MAX_VALUE) {
            throw new IllegalArgumentException("The year they were sown, such as 2024");
        }
    }

    /**
     * What it came to.
     *
     * @param edit to apply
     * @param family number of the family, such as {@code 24-001}
     * @param firstPlace place of the first in the row; 0 if they stand in no row
     */
    public record Plan(Edit edit, String family, NextNumbers.Given numbers, String block, String row, int firstPlace) {}

    public Plan in(Program program, String author) {
        NextNumbers next = new NextNumbers(program);
        String family = next.cross(year);
        NextNumbers.Given numbers = next.seedlings(family, count);
        Edit.Draft edit = Edit.by(author, count + " seedlings on hand, " + family);
        String origin = bought ? "seed of a bought apple" : "";
        Optional<Code<Genotype>> parent = new Mother(program).in(edit, mother, origin);
        edit.put(Kinds.CROSSES, family(family, parent, origin));
        String block = row.isBlank() ? "" : block(program, edit);
        int first = row.isBlank() ? 0 : firstFree(program, block);
        for (int i = 0; i < count; i++) {
            add(program, edit, numbers.numbers().get(i), parent, block, first + i);
        }
        return new Plan(numbers.markSkipped(edit).done(), family, numbers, block, row.strip(), first);
    }

    private Cross family(String family, Optional<Code<Genotype>> parent, String origin) {
        PollenParent<Genotype> pollen = PollenParent.parse("op");
        String reason = origin.isEmpty() ? "seedlings that were there before the records" : origin;
        return new Cross(Code.of(family), Optional.of(date()), parent, pollen, reason, OptionalInt.of(count), "");
    }

    private void add(
            Program program, Edit.Draft edit, String number, Optional<Code<Genotype>> parent, String block, int place) {
        Code<Genotype> genotype = Code.of(number);
        Code<Plant> plant = Code.of(number + "A");
        edit.put(
                Kinds.GENOTYPES,
                new Genotype(
                        genotype,
                        "",
                        program.setting("crop").orElse(""),
                        Optional.of(GenotypeKind.SEEDLING),
                        OptionalInt.empty(),
                        parent,
                        PollenParent.parse("op"),
                        parent.map(any -> Certainty.LIKELY),
                        Optional.empty(),
                        parent.isPresent() ? "told, not tagged" : "",
                        Optional.empty(),
                        Optional.of(date()),
                        "",
                        ""));
        edit.put(Kinds.PLANTS, plant(genotype, plant));
        if (!block.isEmpty()) {
            edit.put(
                    Kinds.PLACES,
                    new Occupancy(
                            plant,
                            Optional.of(Code.of(block)),
                            row.strip(),
                            Integer.toString(place),
                            Optional.empty(),
                            Optional.empty()));
        }
    }

    private Plant plant(Code<Genotype> genotype, Code<Plant> tag) {
        return new Plant(
                tag,
                Optional.of(genotype),
                Optional.of(PlantKind.OWN_ROOT),
                "",
                "",
                Optional.empty(),
                OptionalDouble.empty(),
                "",
                Optional.empty(),
                Optional.of(date()),
                Optional.of(PlantStatus.ALIVE),
                Optional.empty(),
                "",
                Optional.empty(),
                "");
    }

    private PartialDate date() {
        return PartialDate.parse("%04d".formatted(year));
    }

    /** The first block on file, else a new one. */
    private static String block(Program program, Edit.Draft edit) {
        Optional<String> there = program.table(Kinds.BLOCKS).stream()
                .map(some -> some.block().text())
                .findFirst();
        if (there.isEmpty()) {
            OptionalDouble unknown = OptionalDouble.empty();
            edit.put(
                    Kinds.BLOCKS,
                    new Block(
                            Code.of(HOME),
                            unknown,
                            unknown,
                            OptionalInt.empty(),
                            OptionalInt.empty(),
                            unknown,
                            unknown,
                            unknown,
                            unknown,
                            "",
                            "",
                            "rows are counted as the person counts them"));
        }
        return there.orElse(HOME);
    }

    /** The place after the last one taken in the row. */
    private int firstFree(Program program, String block) {
        List<Occupancy> there = program.table(Kinds.PLACES).stream()
                .filter(place ->
                        place.block().filter(code -> code.text().equals(block)).isPresent())
                .filter(place -> place.row().equals(row.strip()))
                .toList();
        return 1 + there.stream().mapToInt(SeedlingsOnHand::number).max().orElse(0);
    }

    private static int number(Occupancy place) {
        String digits = place.place().replaceAll("\\D", "");
        return digits.isEmpty() || digits.length() > 9 ? 0 : Integer.parseInt(digits);
    }
}
