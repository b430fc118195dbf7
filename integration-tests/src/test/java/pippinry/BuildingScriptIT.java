package pippinry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The script that builds before it starts, in a small source tree: its Maven only notes that it was called, and makes an
 * image whose program prints its arguments.
 */
class BuildingScriptIT {

    private static final List<String> TOOLS =
            List.of("sh", "find", "head", "mkdir", "cat", "mv", "rm", "touch", "sleep", "readlink");

    /** Another clock than ours stamps new files on some disks; a step of seconds is seen on all. */
    private static final int STEP_SECONDS = 10;

    @TempDir
    Path folder;

    private Path tree;
    private Path tools;

    @BeforeEach
    void makeATreeAndTools() throws IOException {
        tree = folder.resolve("a tree");
        tools = Files.createDirectories(folder.resolve("tools"));
        for (String source :
                List.of("pom.xml", "bundles/one/pom.xml", "bundles/one/src/A.java", "bundles/one/src/B.java")) {
            write(source, "");
        }
        Files.createDirectories(tree.resolve("demo-data/larkmoor"));
        Files.createDirectories(tree.resolve("features"));
        Files.copy(Path.of("../features/pippinry"), tree.resolve("features/pippinry"));
        for (String tool : TOOLS) {
            link(tool);
        }
        maven(
                """
                echo built >>"$PWD/calls"
                mkdir -p bundles/one/target features/target/pippinry/bin
                echo 'echo "$@"' >features/target/pippinry/bin/pippinry
                touch features/target/pippinry/BUILT
                """);
        ageSources();
    }

    @Test
    void theFirstStartBuildsAndTheSecondDoesNot() throws Exception {
        CalledProgram.Answer first = call("two words", "x");
        assertEquals("two words x\n", first.out(), first.err());
        assertEquals(1, first.err().lines().count(), first.err());
        assertEquals("", call("again").err());
        assertEquals(1, builds());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"pom.xml", "bundles/one/src/A.java", "bundles/one/src/new/C.java", "demo-data/larkmoor/t.csv"})
    void aNewerSourceIsBuiltOnce(String source) throws Exception {
        call();
        write(source, "changed");
        touchLater(tree.resolve(source));
        call();
        assertEquals(2, builds());
    }

    @Test
    void aSourceThatWentAwayIsNoticed() throws Exception {
        call();
        Files.delete(tree.resolve("bundles/one/src/B.java"));
        touchLater(tree.resolve("bundles/one/src"));
        call();
        assertEquals(2, builds());
    }

    @Test
    void whatMavenWritesIsNoSource() throws Exception {
        call();
        touchLater(tree.resolve("bundles/one"));
        write("bundles/one/target/A.class", "");
        touchLater(tree.resolve("bundles/one/target/A.class"));
        call();
        assertEquals(1, builds());
    }

    @Test
    void aBuildThatFailsStartsNothing() throws Exception {
        maven("echo reason; exit 1");
        CalledProgram.Answer answer = call("x");
        assertEquals(3, answer.exit());
        assertEquals("", answer.out());
        assertTrue(answer.err().contains("reason"), answer.err());
    }

    @Test
    void twoAtOnceBuildOnce() throws Exception {
        link("flock");
        assertOneBuildForTwo();
    }

    @Test
    void twoAtOnceBuildOnceWhereThereIsNoFlock() throws Exception {
        assertOneBuildForTwo();
    }

    @Test
    void theLockOfADeadProcessIsTakenAway() throws Exception {
        write("features/target/build.lock.d/owner", "999999999");
        assertEquals("x\n", call("x").out());
    }

    private void assertOneBuildForTwo() throws Exception {
        Path maven = tools.resolve("mvn");
        Files.writeString(maven, Files.readString(maven) + "sleep 1\n");
        Process one = script("one").start();
        Process other = script("other").start();
        assertEquals(0, one.waitFor());
        assertEquals(0, other.waitFor());
        assertEquals(1, builds());
    }

    private CalledProgram.Answer call(String... args) throws Exception {
        return script(args).answer();
    }

    private CalledProgram script(String... args) {
        return CalledProgram.of(tree.resolve("features/pippinry"), args).with("PATH", tools.toString());
    }

    private long builds() throws IOException {
        try (Stream<String> calls = Files.lines(tree.resolve("calls"))) {
            return calls.count();
        }
    }

    private void maven(String script) throws IOException {
        Path maven = tools.resolve("mvn");
        Files.writeString(maven, "#!/bin/sh\nset -e\n" + script);
        assertTrue(maven.toFile().setExecutable(true));
    }

    private void link(String tool) throws IOException {
        Path found = Stream.of("/usr/bin", "/bin")
                .map(bin -> Path.of(bin, tool))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new AssertionError("No " + tool + " on this machine"));
        Files.createSymbolicLink(tools.resolve(tool), found);
    }

    private void write(String source, String text) throws IOException {
        Path file = tree.resolve(source);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private void ageSources() throws IOException {
        try (Stream<Path> sources = Files.walk(tree)) {
            for (Path source : sources.toList()) {
                set(source, -STEP_SECONDS);
            }
        }
    }

    private static void touchLater(Path file) throws IOException {
        set(file, STEP_SECONDS);
    }

    private static void set(Path file, int seconds) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().plusSeconds(seconds)));
    }
}
