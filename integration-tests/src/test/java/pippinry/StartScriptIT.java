package pippinry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start script and the launcher, with a program that tells what it was called with. */
class StartScriptIT {

    private static final Path SCRIPT = RunningProgram.IMAGE.resolve("bin/pippinry");

    @TempDir
    Path folder;

    @Test
    void argumentsArriveAsTheyWereTyped() throws Exception {
        CalledProgram.Answer answer = echo("two words", "", "Ä*", "--feature").answer();
        assertEquals(
                List.of(RunningProgram.IMAGE.toString(), "two words", "", "Ä*", "--feature"),
                answer.lines().subList(0, 5),
                answer.err());
        assertEquals("", answer.err());
    }

    @Test
    void argumentsBeyondAsciiSurviveAPoorLocale() throws Exception {
        CalledProgram.Answer answer =
                echo("Renette d’Orléans").with("LC_ALL", "C").answer();
        assertEquals("Renette d’Orléans", answer.lines().get(1));
    }

    @Test
    void theProgramsExitCodeIsTheProcesss() throws Exception {
        assertEquals(1, echo("exit", "1").answer().exit());
    }

    @Test
    void standardInputReachesTheProgram() throws Exception {
        assertEquals("pip\n", echo("copy").answer("pip\n").out().substring(0, 4));
    }

    @Test
    void theImageMayLieInAFolderWithSpacesAndBeCalledThroughLinks() throws Exception {
        Path image = folder.resolve("a folder with spaces");
        copy(RunningProgram.IMAGE, image);
        Path link = Files.createSymbolicLink(
                folder.resolve("first link"), Path.of("a folder with spaces", "bin", "pippinry"));
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.createSymbolicLink(elsewhere.resolve("second"), link);
        CalledProgram.Answer answer = echo(Path.of("second"), "x").in(elsewhere).answer();
        assertEquals(image.toRealPath().toString(), answer.lines().get(0), answer.err());
    }

    @Test
    void aTerminatedProcessStopsInOrderAndLeavesNoFiles() throws Exception {
        Process process = echo("wait").start();
        try (BufferedReader out = process.inputReader()) {
            Path cache = Path.of(out.readLine());
            assertTrue(Files.isDirectory(cache));
            process.toHandle().destroy(); // SIGTERM that leaves the streams open
            assertEquals("stopped", out.readLine());
            assertTrue(process.waitFor(30, TimeUnit.SECONDS));
            assertFalse(Files.exists(cache), cache.toString());
        }
    }

    @Test
    void anUnknownFeatureIsAWrongCallThatNamesTheKnownOnes() throws Exception {
        CalledProgram.Answer answer =
                CalledProgram.of(SCRIPT, "--feature", "quince", "season").answer();
        assertEquals(2, answer.exit());
        assertTrue(answer.err().contains("'quince'") && answer.err().contains("apple"), answer.err());
    }

    @Test
    void aMisspeltBundleIsAWrongCall() throws Exception {
        CalledProgram.Answer answer = CalledProgram.of(SCRIPT, "--without", "pippinry.pedigre", "season")
                .answer();
        assertEquals(2, answer.exit());
        assertTrue(answer.err().contains("pippinry.pedigre"), answer.err());
    }

    @Test
    void aBundleThatMissesAnotherIsNamed() throws Exception {
        CalledProgram.Answer answer = CalledProgram.of(SCRIPT, "--without", "pippinry.model", "season")
                .answer();
        assertEquals(3, answer.exit());
        assertTrue(answer.err().contains("pippinry.commandline: needs the package pippinry.model"), answer.err());
        assertEquals("", answer.out());
    }

    private static CalledProgram echo(String... args) {
        return echo(SCRIPT, args);
    }

    private static CalledProgram echo(Path script, String... args) {
        Stream<String> options = Stream.of("--feature", "runtime", "--with", RunningProgram.PROBE.toString());
        return CalledProgram.of(script, Stream.concat(options, Stream.of(args)).toArray(String[]::new));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> paths = Files.walk(from)) {
            for (Path path : paths.toList()) {
                Files.copy(path, to.resolve(from.relativize(path)));
            }
        }
    }
}
