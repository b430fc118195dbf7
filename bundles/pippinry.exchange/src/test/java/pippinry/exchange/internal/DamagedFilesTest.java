package pippinry.exchange.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.commandline.CallRefused;

/**
 * Tables damaged at random. Each comes in whole or is refused with its file's name; the program always holds together.
 * {@code -Dfuzz.cases=10000 -Dfuzz.seed=1} runs more or others.
 */
class DamagedFilesTest {

    private static final int CASES = Integer.getInteger("fuzz.cases", 150);
    private static final long SEED = Long.getLong("fuzz.seed", 20260327);
    private static final String[] PIECES = {
        ",",
        "\"",
        "\"\"",
        "\n",
        "\r",
        "\r\n",
        "\0",
        "\ufeff",
        "=",
        "=X",
        "|",
        "/",
        "-",
        " ",
        "\t",
        ";",
        "'",
        "é",
        "\uD83C\uDF4E",
        "A|B",
        "op",
        "self",
        "ns",
        "2016-02-30",
        "1e999",
        "code",
        "note,note",
        "\n\n\n",
        ",,,,,,,,",
        "\u00a0"
    };

    @TempDir
    private Path files;

    @Test
    void damagedTablesComeInWholeOrNotAtAll() throws Exception {
        int came = 0;
        for (int i = 0; i < CASES; i++) {
            long seed = SEED + i;
            try {
                came += comesInWholeOrNotAtAll(new Random(seed), seed) ? 1 : 0;
            } catch (RuntimeException | AssertionError | IOException e) {
                throw new AssertionError("fuzz.seed " + seed + ": " + e, e);
            }
        }
        assertTrue(
                came > CASES / 20 && came < CASES,
                came + " of " + CASES + " came in: the damage is too mild or too hard");
    }

    private boolean comesInWholeOrNotAtAll(Random random, long seed) throws Exception {
        MemoryStore.Folders folders = new MemoryStore.Folders();
        CallInTest call = new CallInTest(folders);
        Path one = files.resolve("one" + seed);
        Path other = files.resolve("other" + seed);
        folders.create(one, call.clock()).apply(new GeneratedProgram(seed).edit(3));
        folders.create(other, call.clock());
        Path out = files.resolve("out" + seed);
        call.run(new ExportProgram(List.of()), one, out);
        List<Path> tables = list(out);
        Path hit = tables.get(random.nextInt(tables.size()));
        Files.write(hit, damaged(Files.readAllBytes(hit), random));
        String[] arguments = Stream.concat(
                        Stream.of(other.toString()), tables.stream().map(Path::toString))
                .toArray(String[]::new);
        boolean keepGoing = random.nextInt(4) == 0;
        try {
            call.run(new ImportFiles(), keepGoing ? with(arguments, "--keep-going") : arguments);
        } catch (CallRefused e) {
            assertTrue(
                    e.getMessage().contains(hit.toString()) || e.getMessage().contains(out.toString()), e.getMessage());
            assertEquals(0, folders.open(other, call.clock()).now().edit());
            return false;
        }
        assertEquals(List.of(), folders.open(other, call.clock()).now().faults());
        return true;
    }

    private static Object[] with(String[] arguments, String last) {
        return Stream.concat(Stream.of(arguments), Stream.of(last)).toArray();
    }

    private static byte[] damaged(byte[] bytes, Random random) {
        byte[] now = bytes;
        for (int hits = 1 + random.nextInt(3); hits > 0; hits--) {
            int place = random.nextInt(now.length + 1);
            now = switch (random.nextInt(5)) {
                case 0 -> joined(now, place, new byte[] {(byte) random.nextInt(256)}, place);
                case 1 -> joined(now, place, new byte[0], Math.min(now.length, place + 1 + random.nextInt(20)));
                case 2 -> joined(now, place, new byte[0], now.length);
                case 3 -> joined(now, place, copied(now, random), place);
                default -> joined(now, place, piece(random), place);
            };
        }
        return now;
    }

    private static byte[] piece(Random random) {
        return PIECES[random.nextInt(PIECES.length)].getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] copied(byte[] bytes, Random random) {
        int from = random.nextInt(bytes.length + 1);
        return java.util.Arrays.copyOfRange(bytes, from, Math.min(bytes.length, from + random.nextInt(80)));
    }

    private static byte[] joined(byte[] bytes, int head, byte[] middle, int tail) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.write(bytes, 0, head);
        all.writeBytes(middle);
        all.write(bytes, tail, bytes.length - tail);
        return all.toByteArray();
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
