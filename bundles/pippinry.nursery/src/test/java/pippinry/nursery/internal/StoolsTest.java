package pippinry.nursery.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.nursery.internal.copies.LimbMap;
import pippinry.nursery.internal.stools.LinersWanted;
import pippinry.nursery.internal.stools.StoolYield;

class StoolsTest {

    private static final String BED =
            """
            genotypes: code
            M27
            plants: tag,genotype,kind,made_on,status
            M27A,M27,stool,2010-03-01,alive
            M27B,M27,stool,2020-03-01,alive
            M27C,M27,stool,2010-03-01,dead
            """;

    @Test
    void theNextHarvestIsReckonedFromTheLastOnesOfAMother() {
        Program program = Records.of(
                BED
                        + """
                scores: subject,trait,value,date,part
                M27A,stool.liners,9,2022-02-18,
                M27A,stool.liners,4,2023-02-18,
                M27B,stool.liners,6,2023-02-18,
                M27A,stool.liners,6,2024-02-18,7-9 mm
                M27A,stool.liners,2,2024-02-18,5-7 mm
                M27B,stool.liners,4,2024-02-18,
                M27A,stool.liners,7,2025-02-18,
                M27B,stool.liners,7,2025-02-18,
                """);
        StoolYield bed = StoolYield.of(program).get(0);
        assertEquals(12, bed.harvests().get(2024), "grades of one harvest are added up");
        assertEquals(5, bed.perMother(2023).getAsDouble());
        StoolYield.Forecast next = bed.next();
        // 5, 6 and 7 liners a mother in the last three years, two living mothers.
        assertEquals(10, next.low());
        assertEquals(12, next.middle());
        assertEquals(14, next.high());
    }

    @Test
    void withoutOwnHarvestsThePlanningFigureSaysWhereItIsFrom() {
        StoolYield.Forecast next = StoolYield.of(Records.of(BED)).get(0).next();
        assertEquals(8, next.low());
        assertEquals(16, next.high());
        assertTrue(next.basis().contains("from memory"));
    }

    @Test
    void oldMothersAreTold() {
        List<Plant> old = StoolYield.of(Records.of(BED)).get(0).old(LocalDate.parse("2026-03-27"));
        assertEquals(
                List.of("M27A"), old.stream().map(plant -> plant.tag().text()).toList());
    }

    @Test
    void linersToGetAreGraftsWantedOverTheTake() {
        Program program = Records.of(
                """
                genotypes: code
                25-001-001
                25-001-002
                24-001-001
                plants: tag,genotype,kind
                25-001-001A,25-001-001,own-root
                25-001-002A,25-001-002,own-root
                25-001-002B,25-001-002,graft
                24-001-001B,24-001-001,graft
                blocks: block
                A
                places: plant,block,row,place
                24-001-001B,A,1,1
                decisions: genotype,decision,date
                24-001-001,keep,2025-12-01
                grafts: plant,date,result
                25-001-002B,2025-03-01,taken
                24-001-001B,2025-03-01,taken
                24-001-001B,2024-03-01,failed
                """);
        LinersWanted wanted = LinersWanted.of(program, Optional.empty());
        // One potted seedling without a graft, and two copies of the kept tree; two of three took.
        assertEquals(3, wanted.grafts());
        assertEquals(OptionalDouble.of(5), wanted.liners());
    }

    @Test
    void theMapOfLimbsStaysInsideItsFrame() {
        StringBuilder records = new StringBuilder(
                "genotypes: code\nFIE\nplants: tag,genotype,kind,host,limb_height_m,limb_side\nHOST,FIE,,,,\n");
        String[] sides = {"N", "NE", "E", "SE", "S", "SW", "W", "NW"};
        for (int i = 0; i < 24; i++) {
            String height = i == 5 ? "" : Double.toString(1.2 + i * 0.1);
            records.append("L%d,FIE,limb,HOST,%s,%s%n".formatted(100 + i, height, sides[i % 8]));
        }
        List<Plant> limbs = Records.of(records.toString()).table(Kinds.PLANTS).stream()
                .filter(plant -> plant.host().isPresent())
                .toList();
        LimbMap map = new LimbMap(limbs);
        Ink ink = Ink.of(map, 483, (int) Math.round(483 * map.aspect(483)));
        assertTrue(ink.inside() > 3000, ink.toString());
        assertEquals(0, ink.outside());
    }
}
