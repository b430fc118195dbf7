package pippinry.nursery.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.Certainty;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantStatus;
import pippinry.model.record.SeedLot;
import pippinry.model.value.Code;
import pippinry.nursery.internal.act.MovingSeed;
import pippinry.nursery.internal.act.NotPossible;
import pippinry.nursery.internal.act.Potting;
import pippinry.nursery.internal.act.Replacing;
import pippinry.nursery.internal.seed.LotSeeds;

class ActionsTest {

    private static final LocalDate DAY = LocalDate.parse("2026-04-10");
    private static final String RECORDS =
            """
            genotypes: code
            FIE
            TOP
            20-001-001
            crosses: code,year,seed_parent,pollen_parent
            25-001,2025,FIE,TOP
            25-002,2025,TOP,FIE
            seedlots: code,cross,seeds_full,sown_on,sown,source,fruits
            L1,25-001,40,2026-02-20,40,,6
            L2,25-002,30,,,,5
            L3,25-002,10,,,,2
            L4,25-001,20,,,,3
            LG,,12,2026-02-20,12,gift,
            plants: tag,genotype,kind,status
            20-001-001A,20-001-001,own-root,alive
            20-001-001B,20-001-001,graft,alive
            FIE-1,FIE,graft,alive
            blocks: block
            A
            N
            places: plant,block,row,place,from
            20-001-001A,A,7,9,2022-11-20
            20-001-001B,N,1,3,2023-03-20
            """;

    @Test
    void pottingGivesEachSeedlingANumberAPlantAndItsParents() throws Exception {
        Program program = Records.of(RECORDS);
        Potting.Plan plan = new Potting(Code.of("L1"), 30, DAY).in(program, "IN");
        Program after = apply(program, plan.edit());
        assertEquals(30, plan.numbers().numbers().size());
        for (String number : plan.numbers().numbers()) {
            assertTrue(CheckCharacter.of(number) != '*' && CheckCharacter.of(number + "A") != '*', number);
            Genotype seedling =
                    after.find(Kinds.GENOTYPES, Code.<Genotype>of(number)).orElseThrow();
            assertEquals(Optional.of(Code.of("FIE")), seedling.seedParent());
            assertEquals(Optional.of(Certainty.SURE), seedling.pollenLink());
            assertTrue(after.find(Kinds.PLANTS, Code.<Plant>of(number + "A")).isPresent());
        }
        assertEquals(OptionalInt.of(30), lot(after, "L1").potted());
        assertEquals(
                plan.numbers().skipped().size(), after.table(Kinds.NEVERGIVEN).size());
    }

    @Test
    void moreThanWereSownCannotBePotted() throws Exception {
        Program program = Records.of(RECORDS);
        Program after = apply(
                program, new Potting(Code.of("L1"), 30, DAY).in(program, "IN").edit());
        NotPossible no = assertThrows(NotPossible.class, () -> new Potting(Code.of("L1"), 11, DAY).in(after, "IN"));
        assertTrue(no.getMessage().contains("40 seeds were sown; 41"), no.getMessage());
    }

    @Test
    void aLotWithoutACrossGetsAFamilyOfItsOwn() throws Exception {
        Program program = Records.of(RECORDS);
        Potting.Plan plan = new Potting(Code.of("LG"), 5, DAY).in(program, "IN");
        Program after = apply(program, plan.edit());
        assertEquals("26-001", plan.family());
        assertEquals(
                "gift",
                after.find(Kinds.CROSSES, Code.of("26-001")).orElseThrow().reason());
        assertEquals(Optional.of(Code.of("26-001")), lot(after, "LG").cross());
    }

    @Test
    void aSplitLotKeepsItsCrossAndSaysWhereItCameFrom() throws Exception {
        Program program = Records.of(RECORDS);
        Edit edit = new MovingSeed(Code.of("L2"), Code.of("L2-2"), 12, DAY, "damp sand", false).in(program, "IN");
        Program after = apply(program, edit);
        assertEquals(Optional.of(Code.of("25-002")), lot(after, "L2-2").cross());
        assertEquals("part of L2", lot(after, "L2-2").source());
        assertEquals(OptionalInt.of(18), LotSeeds.of(after, lot(after, "L2")));
        assertEquals(OptionalInt.of(12), LotSeeds.of(after, lot(after, "L2-2")));
    }

    @Test
    void lotsOfOneCrossArePutTogetherWithTheirSeedsAdded() throws Exception {
        Program program = Records.of(RECORDS);
        Program after =
                apply(program, new MovingSeed(Code.of("L3"), Code.of("L2"), 10, DAY, "", false).in(program, "IN"));
        assertEquals(OptionalInt.of(40), LotSeeds.of(after, lot(after, "L2")));
        assertEquals(OptionalInt.of(0), LotSeeds.of(after, lot(after, "L3")));
    }

    @Test
    void seedsOfTwoCrossesAreMixedOnlyOnPurposeAndThenHaveNoCross() throws Exception {
        Program program = Records.of(RECORDS);
        assertThrows(NotPossible.class, () -> new MovingSeed(Code.of("L4"), Code.of("L2"), 5, DAY, "", false)
                .in(program, "IN"));
        Program after =
                apply(program, new MovingSeed(Code.of("L4"), Code.of("L2"), 5, DAY, "", true).in(program, "IN"));
        assertEquals(Optional.empty(), lot(after, "L2").cross());
        assertEquals("mixed: 25-002, 25-001", lot(after, "L2").source());
    }

    @Test
    void moreSeedsThanALotHoldsCannotMoveNorThoseInTheSoil() {
        Program program = Records.of(RECORDS);
        assertThrows(NotPossible.class, () -> new MovingSeed(Code.of("L3"), Code.of("L2"), 11, DAY, "", false)
                .in(program, "IN"));
        assertThrows(NotPossible.class, () -> new MovingSeed(Code.of("L1"), Code.of("L4"), 1, DAY, "", false)
                .in(program, "IN"));
    }

    @Test
    void aCopyTakesTheLostPlantsPlaceInOneAction() throws Exception {
        Program program = Records.of(RECORDS);
        Edit edit = new Replacing(Code.of("20-001-001A"), Code.of("20-001-001B"), PlantStatus.DEAD, "vole", DAY)
                .in(program, "IN");
        Program after = apply(program, edit);
        Plant gone = after.find(Kinds.PLANTS, Code.<Plant>of("20-001-001A")).orElseThrow();
        assertEquals("vole", gone.cause());
        assertEquals(Optional.of(PlantStatus.DEAD), gone.status());
        List<Occupancy> standing = after.table(Kinds.PLACES).stream()
                .filter(place -> place.to().isEmpty())
                .toList();
        assertEquals(1, standing.size());
        assertEquals(
                "20-001-001B at A/7/9",
                standing.get(0).plant() + " at A/" + standing.get(0).row() + "/"
                        + standing.get(0).place());
        assertEquals(3, after.table(Kinds.PLACES).size(), "who stood there before stays on file");
    }

    @Test
    void onlyALivingCopyOfTheSameGenotypeCanTakeThePlace() {
        Program program = Records.of(RECORDS);
        NotPossible no = assertThrows(NotPossible.class, () -> new Replacing(
                        Code.of("20-001-001A"), Code.of("FIE-1"), PlantStatus.DEAD, "vole", DAY)
                .in(program, "IN"));
        assertFalse(no.getMessage().isBlank());
        assertThrows(NotPossible.class, () -> new Replacing(
                        Code.of("FIE-1"), Code.of("20-001-001A"), PlantStatus.DEAD, "vole", DAY)
                .in(program, "IN"));
    }

    private static SeedLot lot(Program program, String code) {
        return program.find(Kinds.SEEDLOTS, Code.<SeedLot>of(code)).orElseThrow();
    }

    private static Program apply(Program program, Edit edit) throws EditRefused {
        return program.apply(edit, Instant.EPOCH).program();
    }
}
