package pippinry.pedigree.internal.parentage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pippinry.traits.AlleleSeries;
import pippinry.traits.SAllele;
import pippinry.traits.SGenotype;

class ParentageTestTest {
    private static final double ERROR = 0.01;

    /** Ten alleles, each as common as the others. */
    private static final AlleleSeries TEN =
            series(IntStream.rangeClosed(1, 10).mapToObj(i -> "S" + i).toList());

    private static AlleleSeries series(List<String> names) {
        return AlleleSeries.closed(
                "test",
                names.stream().map(SAllele::ordinary).toList(),
                names.stream().collect(Collectors.toMap(Function.identity(), name -> 1.0 / names.size())));
    }

    private static SMarker sAlleles(AlleleSeries series, double error, String... genotypes) {
        SGenotype[] read = Arrays.stream(genotypes)
                .map(text -> text.isEmpty() ? null : SGenotype.parse(text, series))
                .toArray(SGenotype[]::new);
        return new SMarker(series, read, error);
    }

    private static Claim claim(int... pollenParents) {
        return new Claim(0, 1, 0, pollenParents, 0.1);
    }

    static Stream<NamedCsvRecord> publishedCases() throws IOException {
        try (Reader in = new InputStreamReader(
                        ParentageTestTest.class.getResourceAsStream("s-parentage-tests.csv"), StandardCharsets.UTF_8);
                CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(in)) {
            return csv.stream().toList().stream();
        }
    }

    /** Matsumoto (2014) International Journal of Agronomy 2014:138271, Table 1, and others; each row of the table names its source. */
    @ParameterizedTest
    @MethodSource("publishedCases")
    void publishedParentagesAreJudgedAsInPrint(NamedCsvRecord row) {
        AlleleSeries all =
                series(List.of("S1", "S2", "S3", "S4", "S5", "S7", "S8", "S9", "S10", "S20", "S24", "S25", "S28"));
        SMarker marker =
                sAlleles(all, ERROR, row.getField("child_s"), row.getField("seed_s"), row.getField("pollen_s"));
        Fit fit = new ParentageTest(List.of(marker)).of(claim(2));
        boolean possible = row.getField("verdict").equals("possible");
        assertEquals(possible, fit.against().isEmpty(), row.toString());
        assertEquals(possible, fit.possible()[0]);
        assertEquals(possible, fit.pollenParents()[0] > 0.5, () -> row + " " + fit.pollenParents()[0]);
    }

    /** Kurosawa 4 Gou has both alleles of Fuji and none of Akane: "fits a selfing slip or a sport, not this cross". */
    @Test
    void aChildLikeItsSeedParentPointsToItsOwnPollen() {
        SMarker marker = sAlleles(TEN, 0.001, "S1/S9", "S1/S9", "S7/S8");
        Fit fit = new ParentageTest(List.of(marker)).of(new Claim(0, 1, 0.01, new int[] {2}, 0.01));
        assertEquals(List.of("S-alleles"), fit.against());
        assertTrue(fit.selfed() > 0.5, () -> "selfed: " + fit.selfed());
        assertTrue(fit.pollenParents()[0] < 0.05);
    }

    /** By hand: child S1/S3 of S1/S2. A S3/S4 gives it once in four, B S1/S3 every second time, C S5/S6 never. */
    @Test
    void candidatesAreWeighedByTheirMendelianLikelihood() {
        SMarker exact = sAlleles(TEN, 0, "S1/S3", "S1/S2", "S3/S4", "S1/S3", "S5/S6");
        Fit fit = new ParentageTest(List.of(exact)).of(new Claim(0, 1, 0, new int[] {2, 3, 4}, 0));
        double a = 0.99 / 3 * 0.25;
        double b = 0.99 / 3 * 0.5;
        assertArrayEquals(new double[] {a / (a + b), b / (a + b), 0}, fit.pollenParents(), 1e-12);
        assertArrayEquals(new boolean[] {true, true, false}, fit.possible());
        assertEquals(0, fit.somebodyElse(), 1e-12);
    }

    /** By hand: a wrong reading of the child is a pair of the population, 2/90 of it; of the candidate, a parent of the population. */
    @Test
    void aWrongReadingKeepsAnExcludedParentAlive() {
        SMarker marker = sAlleles(TEN, ERROR, "S1/S3", "S1/S2", "S5/S6");
        double population = 2 * 0.1 * 0.1 / 0.9;
        double ofSeedAndAnybody = marker.fromParents(0, 1, Marker.ANYBODY);
        double ofPollenAndAnybody = marker.fromParents(0, Marker.ANYBODY, 2);
        double expected = 0.99 * (0.01 * 0.99 * ofPollenAndAnybody + 0.99 * 0.01 * ofSeedAndAnybody + 1e-4 * population)
                + 0.01 * population;
        assertEquals(expected, Mistyping.fromParents(marker, 0, 1, 2), 1e-15);
        assertEquals(0, ofPollenAndAnybody);
        Fit fit = new ParentageTest(List.of(marker)).of(claim(2));
        assertFalse(fit.possible()[0]);
        assertTrue(fit.pollenParents()[0] > 0 && fit.pollenParents()[0] < 0.2, () -> "" + fit.pollenParents()[0]);
    }

    /** Pollen of anybody by an S1/S2 style carries S3 once in eight when ten alleles are alike common: 1/2 of 1/8. */
    @Test
    void pollenOfAnybodyPassesTheStyleToo() {
        SMarker marker = sAlleles(TEN, 0, "S1/S3", "S1/S2");
        assertEquals(0.5 / 8, marker.fromParents(0, 1, Marker.ANYBODY), 0.01);
        double all = 0;
        for (String child : List.of("S1/S3", "S1/S4", "S1/S5", "S1/S6", "S1/S7", "S1/S8", "S1/S9", "S1/S10")) {
            all += 2 * sAlleles(TEN, 0, child, "S1/S2").fromParents(0, 1, Marker.ANYBODY);
        }
        assertEquals(1, all, 1e-12);
    }

    @Test
    void nothingReadLeavesWhatWasBelieved() {
        SMarker nothing = sAlleles(TEN, ERROR, "", "S1/S2", "S3/S4");
        Fit fit = new ParentageTest(List.of(nothing)).of(new Claim(0, 1, 0.1, new int[] {2}, 0.5));
        assertEquals(List.of(), fit.markers());
        assertEquals(0.9, fit.seedParent(), 1e-12);
        assertEquals(0.9 * 0.99 * 0.5 + 0.1 * 0.5, fit.pollenParents()[0], 1e-12);
        double sum = fit.pollenParents()[0] + fit.selfed() + fit.somebodyElse();
        assertEquals(1, sum, 1e-12);
    }

    @Test
    void candidatesShareWhatIsBelievedOfThem() {
        SMarker nothing = sAlleles(TEN, ERROR, "", "S1/S2", "S3/S4", "S3/S5");
        Fit fit = new ParentageTest(List.of(nothing)).of(new Claim(0, 1, 0, new int[] {2, 3}, 0.4));
        assertArrayEquals(new double[] {0.99 * 0.3, 0.99 * 0.3}, fit.pollenParents(), 1e-12);
        assertEquals(0.99 * 0.4, fit.somebodyElse(), 1e-12);
        assertEquals(0.01, fit.selfed(), 1e-12);
    }

    @Test
    void anAlleleThatIsNotKnownExcludesNobody() {
        SMarker marker = sAlleles(TEN, 0, "S3/S?", "S1/S2", "S3/S4", "S5/S?");
        Fit fit = new ParentageTest(List.of(marker)).of(claim(2, 3));
        assertArrayEquals(new boolean[] {true, true}, fit.possible());
        assertTrue(fit.pollenParents()[0] > 2 * fit.pollenParents()[1]);
    }

    @Test
    void aTriploidIsExcludedButNeverFavoured() {
        SMarker marker = sAlleles(TEN, 0, "S1/S3", "S1/S2", "S3/S4/S5", "S6/S7/S8");
        assertTrue(marker.fromParents(0, 1, 2) > 0);
        assertEquals(marker.inPopulation(0), marker.fromParents(0, 1, 2));
        assertEquals(0, marker.fromParents(0, 1, 3));
    }

    private static DosageMarker columnar(double... shown) {
        double[][] readings = Arrays.stream(shown)
                .mapToObj(s -> s == 1 ? new double[] {0, 1, 1} : s == 0 ? new double[] {1, 0, 0} : null)
                .toArray(double[][]::new);
        return new DosageMarker("Co", readings, 0.2, 0);
    }

    @Test
    void aDominantMarkDoesNotComeFromParentsWithoutIt() {
        Fit fit = new ParentageTest(List.of(columnar(1, 0, 0, 1, -1))).of(claim(2, 3, 4));
        assertArrayEquals(new boolean[] {false, true, true}, fit.possible());
        assertEquals(0, fit.pollenParents()[0], 1e-12);
    }

    /** By hand at q = 0.2: shown is Co/Co 0.04 or Co/co 0.32; a gamete of it carries Co with chance (0.04 + 0.16)/0.36. */
    @Test
    void aVisibleMarkIsWeighedWithBothGenotypesBehindIt() {
        DosageMarker marker = columnar(1, 0, 1);
        assertEquals((0.04 + 0.16) / 0.36, marker.fromParents(0, 1, 2), 1e-15);
        assertEquals(0.2, marker.fromParents(0, 1, Marker.ANYBODY), 1e-15);
        assertEquals(0.36, marker.inPopulation(0), 1e-15);
        assertEquals((0.04 + 0.32 * 0.75) / 0.36, marker.fromSelfing(0, 2), 1e-15);
    }

    @Test
    void chancesOfAllChildrenSumToOne() {
        double[][] readings = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0, 1, 1}, {0, 1, 0}};
        DosageMarker marker = new DosageMarker("Rvi6", readings, 0.3, 0.05);
        double fromTwo = 0;
        double fromSelf = 0;
        double population = 0;
        for (int child = 0; child < 3; child++) {
            fromTwo += Mistyping.fromParents(marker, child, 3, 4);
            fromSelf += Mistyping.fromSelfing(marker, child, 3);
            population += marker.inPopulation(child);
        }
        assertEquals(1, fromTwo, 1e-12);
        assertEquals(1, fromSelf, 1e-12);
        assertEquals(1, population, 1e-12);
    }
}
