package pippinry.crossing.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import pippinry.commandline.Answer;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;

class ReckoningCommandsTest {

    // formulae.md, sections 1 and 2 of the genetics reference.
    @ParameterizedTest
    @CsvSource({"0.125, 0.95, 1, 23", "1/16, 0.95, 1, 47", "0.25, 0.99, 1, 17", "0.25, 0.95, 5, 34"})
    void howManyGivesTheTabledNumbers(String share, String sure, String atLeast, long seedlings) throws Exception {
        Answer answer = run(new HowManyCommand(), "--share", share, "--sure", sure, "--atleast", atLeast);
        assertEquals(Map.of("seedlings", seedlings), answer.json());
        assertTrue(answer.yes());
    }

    @Test
    void nothingWantedCanBeHadFromAShareOfZero() throws Exception {
        Answer answer = run(new HowManyCommand(), "--share", "0", "--sure", "0.9");
        assertFalse(answer.yes());
        assertNull(answer.json().get("seedlings"));
    }

    @ParameterizedTest
    @CsvSource({"1.2, 0.9, 1", "x, 0.9, 1", "0.5, 1, 1", "0.5, 0.9, 0", "0.5, 0.9, 1.5", "1/0, 0.9, 1", "NaN, 0.9, 1"})
    void wrongNumbersAreRefusedByOptionAndValue(String share, String sure, String atLeast) {
        CallRefused refused = assertThrows(
                CallRefused.class,
                () -> run(new HowManyCommand(), "--share", share, "--sure", sure, "--atleast", atLeast));
        assertTrue(refused.getMessage().startsWith("--"), refused.getMessage());
        assertTrue(refused.getMessage().contains("expected"), refused.getMessage());
    }

    @Test
    void matchGivesFertilityAndOffspring() throws Exception {
        Answer answer = run(new MatchCommand(), "--seed", "S2/S3", "--pollen", "S2/S9");
        assertEquals("half", answer.json().get("fertility"));
        assertEquals(Map.of("S2/S9", 0.5, "S3/S9", 0.5), answer.json().get("offspring"));
        assertTrue(answer.yes());
    }

    @Test
    void matchSaysNoToAnImpossibleCross() throws Exception {
        Answer answer = run(new MatchCommand(), "--seed", "S2/S3", "--pollen", "S3/S2");
        assertEquals("none", answer.json().get("fertility"));
        assertEquals(Map.of(), answer.json().get("offspring"));
        assertFalse(answer.yes());
    }

    @Test
    void matchKeepsWhatIsNotKnownOpen() throws Exception {
        Answer answer = run(new MatchCommand(), "--seed", "S2/S?", "--pollen", "S2/S9");
        assertEquals("unknown", answer.json().get("fertility"));
        assertEquals(List.of("half", "none"), List.copyOf((Set<?>) answer.json().get("possible")));
        assertThrows(CallRefused.class, () -> run(new MatchCommand(), "--seed", "A/B", "--pollen", "S2/S9"));
    }

    @Test
    void ratioGivesBothTests() throws Exception {
        // Enumerated in another language: erfc(sqrt(4.32 / 2)), and the sum over binomial(100, 3/4) of what is no
        // likelier than 84.
        Answer answer = run(new RatioCommand(), "--observed", "84,16", "--expected", "3:1");
        assertEquals(4.32, number(answer, "chi_square"), 1e-12);
        assertEquals(1, answer.json().get("df"));
        assertEquals(0.03766692222862868, number(answer, "p"), 1e-12);
        assertEquals(0.03753736229897493, number(answer, "p_exact"), 1e-12);
    }

    @Test
    void ratioSaysWhyThereIsNoExactProbability() throws Exception {
        Answer answer = run(new RatioCommand(), "--observed", "900,300,300,100", "--expected", "9:3:3:1");
        assertNull(answer.json().get("p_exact"));
        assertTrue(answer.json().get("notes").toString().contains("p_exact"));
    }

    @Test
    void ratioComparesFamilies() throws Exception {
        Answer answer = run(new RatioCommand(), "--observed", "28,26", "--observed", "23,31", "--expected", "1:1");
        // Hauck et al. 2006, Genetics 172:1191-1198, Table 3: 0.07 and 1.19; pooled 51:57.
        Map<?, ?> sum = (Map<?, ?>) answer.json().get("sum");
        assertEquals(0.0741 + 1.1852, (double) sum.get("chi_square"), 1e-4);
        assertEquals(36.0 / 108, number(answer, "chi_square"), 1e-12);
    }

    @Test
    void classesMustAgree() {
        assertThrows(CallRefused.class, () -> run(new RatioCommand(), "--observed", "84,16,3", "--expected", "3:1"));
        assertThrows(CallRefused.class, () -> run(new RatioCommand(), "--observed", "84,-1", "--expected", "3:1"));
        assertThrows(CallRefused.class, () -> run(new RatioCommand(), "--observed", "0,0", "--expected", "3:1"));
    }

    private static double number(Answer answer, String key) {
        return ((Number) answer.json().get(key)).doubleValue();
    }

    private static Answer run(Subcommand command, String... arguments) throws Exception {
        new CommandLine(command).parseArgs(arguments);
        return command.run(null);
    }
}
