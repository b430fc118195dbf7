package pippinry.statistics.proportions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.statistics.ExpectedValues;

class TrialsNeededTest {

    private static final Pattern LABEL = Pattern.compile("q([0-9.]+)_p([0-9.]+)_r(\\d+)");

    @Test
    void agreesWithExactSearchByAnotherProgram() {
        ExpectedValues.of("05-segregation/family-size").vector("n_needed", label -> {
            Matcher m = LABEL.matcher(label);
            assertTrue(m.matches(), label);
            return needed(Integer.parseInt(m.group(3)), Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2)));
        });
    }

    // formulae.md, sections 1, 2, 5, 8 of the project's genetics reference, recomputed there in double precision.
    @ParameterizedTest
    @CsvSource({
        "1, 0.25, 0.99, 17",
        "1, 0.0625, 0.95, 47",
        "5, 0.25, 0.95, 34",
        "3, 0.125, 0.95, 49",
        "20, 0.0625, 0.99, 504",
        "1, 0.004950, 0.95, 604",
        "1, 0.004999, 0.95, 598",
        "1, 0.454683, 0.95, 5",
        "1, 0.9094, 0.95, 2"
    })
    void agreesWithPublishedTables(int least, double share, double sure, long expected) {
        assertEquals(expected, needed(least, share, sure));
    }

    @Test
    void certaintyMetExactlyNeedsNoFurtherTrial() {
        assertEquals(2, needed(1, 0.5, 0.75));
        assertEquals(10, needed(1, 0.5, 1 - Math.pow(0.5, 10)));
        assertEquals(7, needed(7, 1, 0.99));
    }

    @Test
    void oneTrialLessIsNotEnough() {
        for (double share : new double[] {1e-6, 0.001, 0.03, 0.2, 0.6, 0.97}) {
            for (int least : new int[] {1, 2, 7, 40, 300}) {
                long n = needed(least, share, 0.95);
                KnownShare known = new KnownShare(share);
                assertTrue(known.fewerThan(least, n) <= 0.05 * (1 + 1e-9));
                assertTrue(known.fewerThan(least, n - 1) > 0.05, share + " " + least);
            }
        }
    }

    @Test
    void nothingIsEnoughForAShareOfZero() {
        assertEquals(OptionalLong.empty(), TrialsNeeded.atLeast(1, new KnownShare(0), 0.95));
    }

    @Test
    void aParentThatPerhapsLacksTheAlleleSetsACeiling() {
        MixedShare share = new MixedShare(
                List.of(new MixedShare.Case(0.9, new KnownShare(0.5)), new MixedShare.Case(0.1, new KnownShare(0))));
        assertEquals(OptionalLong.empty(), TrialsNeeded.atLeast(1, share, 0.95));
        // 0.9 (1 - 0.5^n) >= 0.85 needs 0.5^n <= 1/18: n = 5.
        assertEquals(5, TrialsNeeded.atLeast(1, share, 0.85).orElseThrow());
    }

    @Test
    void doubtAboutTheShareAsksForMore() {
        long known = needed(1, 0.25, 0.95);
        long believed = TrialsNeeded.atLeast(1, new BetaBelief(1, 3), 0.95).orElseThrow();
        assertTrue(believed > known, believed + " > " + known);
        // Beta(1, 3): P(none of n) = B(1, 3 + n) / B(1, 3) = 3 / (3 + n) <= 0.05 from n = 57.
        assertEquals(57, believed);
    }

    @Test
    void certaintyOfOneIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> TrialsNeeded.atLeast(1, new KnownShare(0.5), 1));
        assertThrows(IllegalArgumentException.class, () -> TrialsNeeded.atLeast(0, new KnownShare(0.5), 0.9));
    }

    private static long needed(int least, double share, double sure) {
        return TrialsNeeded.atLeast(least, new KnownShare(share), sure).orElseThrow();
    }
}
