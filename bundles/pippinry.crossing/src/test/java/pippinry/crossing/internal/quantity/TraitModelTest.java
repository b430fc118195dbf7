package pippinry.crossing.internal.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pippinry.crossing.internal.TestPack;
import pippinry.crossing.internal.TestProgram;
import pippinry.model.Program;
import pippinry.model.value.Code;
import pippinry.statistics.selection.FamilyOutlook;

class TraitModelTest {

    private static final double MEAN = 100;
    private static final double ADDITIVE = 6;
    private static final double REST = 4;
    private static final int PARENTS = 40;

    @Test
    void predictedMeansFollowTheTruthOfAMadeUpProgram() {
        Made made = new Made(17, 40, 25);
        TraitModel model = TraitModel.of(made.program, "size", 0).orElseThrow();
        // Truth: additive 36, rest of one record 16, so h2 = t = 0.69; the regression on 40 families finds it nearly.
        assertEquals(36.0 / 52, model.repeatability(), 0.12);
        assertEquals(36.0 / 52, model.heritability(), 0.15);
        int inside = 0;
        for (int i = 0; i < 30; i++) {
            FamilyOutlook outlook = model.outlook(Code.of(parent(i)), Code.of(parent(i + 7)), 0);
            double truth = MEAN + (made.worth[i] + made.worth[i + 7]) / 2;
            inside += Math.abs(truth - outlook.mean()) < 2 * outlook.doubt() ? 1 : 0;
            // Within families half the additive variance is left: 18, deviation 4.24.
            assertEquals(4.24, outlook.spread(), 0.8);
        }
        assertTrue(inside >= 26, inside + " of 30 true means lie within two deviations");
    }

    @Test
    void yearsAreTakenOut() {
        // EARL was seen only in a good year, LATE only in a bad one; the others join the years.
        StringBuilder scores = new StringBuilder("subject,trait,value,date\nEARL,size,130,2020\nLATE,size,90,2021\n");
        for (int i = 0; i < 10; i++) {
            scores.append("%s,size,%d,2020\n%s,size,%d,2021\n".formatted(parent(i), 120 + i, parent(i), 80 + i));
        }
        TraitModel model = TraitModel.of(program("EARL,\nLATE,\n", scores.toString()), "size", 0)
                .orElseThrow();
        assertEquals(
                0,
                model.value(Code.of("EARL")).orElseThrow()
                        - model.value(Code.of("LATE")).orElseThrow(),
                1e-9);
    }

    @Test
    void fewRecordsAreDrawnIn() {
        StringBuilder scores = new StringBuilder("subject,trait,value,date\n");
        Random dice = new Random(2);
        for (int i = 0; i < 12; i++) {
            for (int year = 2015; year < 2021; year++) {
                scores.append(row(parent(i), 100 + 3 * (i - 6) + 4 * dice.nextGaussian(), year));
            }
        }
        scores.append(row("NEWC", 150, 2020));
        TraitModel model =
                TraitModel.of(program("NEWC,\n", scores.toString()), "size", 0).orElseThrow();
        double lead = model.outlook(Code.of("NEWC"), Code.of("NEWC"), 0).mean() - model.mean();
        double raw = model.value(Code.of("NEWC")).orElseThrow() - model.mean();
        assertTrue(lead > 0 && lead < 0.8 * raw, lead + " of " + raw);
        assertTrue(model.outlook(Code.of("NEWC"), Code.of("NEWC"), 0).doubt()
                > model.outlook(Code.of(parent(0)), Code.of(parent(1)), 0).doubt());
    }

    @Test
    void familiesThatFallShortShiftThePrediction() {
        Made made = new Made(23, 40, 25, -20);
        TraitModel model = TraitModel.of(made.program, "size", 0).orElseThrow();
        FamilyOutlook outlook = model.outlook(Code.of(parent(0)), Code.of(parent(1)), 0);
        double midParent = (model.value(Code.of(parent(0))).orElseThrow()
                        + model.value(Code.of(parent(1))).orElseThrow())
                / 2;
        assertTrue(outlook.mean() < midParent - 8, outlook.mean() + " below " + midParent);
    }

    @Test
    void thePublishedShiftStandsWhereNoFamilyWasSeen() {
        StringBuilder scores = new StringBuilder("subject,trait,value,date\n");
        for (int i = 0; i < 12; i++) {
            scores.append(row(parent(i), 140 + 4 * i, 2019)).append(row(parent(i), 141 + 4 * i, 2020));
        }
        TraitModel model =
                TraitModel.of(program("", scores.toString()), "size", -0.34).orElseThrow();
        assertEquals(
                0.66 * model.mean(),
                model.outlook(Code.of("NONE"), Code.of("NONE"), 0).mean(),
                1e-6);
    }

    @Test
    void tooFewKindsForetellNothing() {
        assertEquals(
                Optional.empty(),
                TraitModel.of(program("", "subject,trait,value,date\n" + row(parent(0), 3, 2020)), "size", 0));
        assertEquals(Optional.empty(), TraitModel.of(program("", "subject,trait,value,date\n"), "none", 0));
    }

    @Test
    void mustsGetAShareAndWishesALead() {
        Made made = new Made(31, 40, 25);
        Program program =
                made.withGoals("trait,kind,direction,threshold,weight\nsize,must,less,100,\nsize2,wish,more,,2");
        QuantityBook book = new QuantityBook(program, Optional.of(TestPack.pack()));
        assertEquals(List.of("size2"), book.silent());
        CrossQuantity quantity =
                book.of(Code.of(parent(0)), Code.of(parent(1)), 0).get(0);
        assertEquals(1 - quantity.outlook().shareAbove(100), quantity.share().orElseThrow(), 1e-12);
        assertTrue(quantity.told());
        CrossQuantity unknown = book.of(Code.of("NONE"), Code.of("NIL"), 0).get(0);
        assertTrue(!unknown.told()
                && unknown.outlook().doubt() > quantity.outlook().doubt());
    }

    /** Parents with true worths and families of them, each plant with one record, the parents with six. */
    private static final class Made {
        private final double[] worth = new double[PARENTS];
        private final StringBuilder scores = new StringBuilder("subject,trait,value,date\n");
        private final StringBuilder seedlings = new StringBuilder();
        private final Program program;

        Made(long seed, int families, int size) {
            this(seed, families, size, 0);
        }

        Made(long seed, int families, int size, double shift) {
            Random dice = new Random(seed);
            for (int i = 0; i < PARENTS; i++) {
                worth[i] = ADDITIVE * dice.nextGaussian();
                for (int year = 2015; year < 2021; year++) {
                    scores.append(row(parent(i), MEAN + worth[i] + REST * dice.nextGaussian(), year));
                }
            }
            for (int family = 0; family < families; family++) {
                int one = family % PARENTS;
                int other = (family * 7 + 3) % PARENTS;
                for (int i = 0; i < size && one != other; i++) {
                    String code = TestProgram.code("15-%03d-%03d".formatted(family + 1, i + 1));
                    double value = MEAN
                            + shift
                            + (worth[one] + worth[other]) / 2
                            + ADDITIVE / Math.sqrt(2) * dice.nextGaussian()
                            + REST * dice.nextGaussian();
                    if (seedlings.indexOf(code) < 0) {
                        seedlings
                                .append(code)
                                .append(',')
                                .append(parent(one))
                                .append(',')
                                .append(parent(other))
                                .append('\n');
                        scores.append(row(code, value, 2020));
                    }
                }
            }
            program = program(seedlings.toString(), scores.toString());
        }

        Program withGoals(String goals) {
            return base(seedlings.toString(), scores.toString())
                    .csv("goals", goals)
                    .build();
        }
    }

    private static String parent(int i) {
        return TestProgram.code("PAR" + (100 + i));
    }

    private static String row(String subject, double value, int year) {
        return String.format(Locale.ROOT, "%s,size,%.4f,%d%n", subject, value, year);
    }

    private static Program program(String more, String scores) {
        return base(more, scores).build();
    }

    private static TestProgram base(String more, String scores) {
        List<String> lines = new ArrayList<>(List.of("code,seed_parent,pollen_parent"));
        for (int i = 0; i < PARENTS; i++) {
            lines.add(parent(i) + ",,");
        }
        more.lines().forEach(line -> lines.add(line.endsWith(",") ? line + "," : line));
        return new TestProgram().csv("genotypes", String.join("\n", lines)).csv("scores", scores);
    }
}
