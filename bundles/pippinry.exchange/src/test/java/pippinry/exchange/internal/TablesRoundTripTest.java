package pippinry.exchange.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pippinry.model.Program;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

class TablesRoundTripTest {

    @TempDir
    private Path files;

    private final MemoryStore.Folders folders = new MemoryStore.Folders();
    private final CallInTest call = new CallInTest(folders);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatWasExportedAndImportedIsExportedAsTheSameBytes(long seed) throws Exception {
        Path one = files.resolve("one");
        Path other = files.resolve("other");
        folders.create(one, call.clock()).apply(new GeneratedProgram(seed).edit(12));
        folders.create(other, call.clock());

        call.run(new ExportProgram(List.of()), one, files.resolve("first"));
        List<Path> tables = list(files.resolve("first"));
        assertEquals(Kinds.ALL.size(), tables.size(), "every kind is there");
        call.run(
                new ImportFiles(),
                Stream.concat(Stream.of(other), tables.stream()).toArray());
        call.run(new ExportProgram(List.of()), other, files.resolve("second"));

        for (Path table : tables) {
            assertArrayEquals(
                    Files.readAllBytes(table),
                    Files.readAllBytes(files.resolve("second").resolve(table.getFileName())),
                    table.getFileName().toString());
        }
        assertEquals(tables.size(), list(files.resolve("second")).size());
        Kinds.ALL.forEach(kind -> assertSameRecords(kind, now(one), now(other)));
    }

    @Test
    void whatWasExportedIsAllOnFileAlready() throws Exception {
        Path one = files.resolve("one");
        folders.create(one, call.clock()).apply(new GeneratedProgram(9).edit(12));
        call.run(new ExportProgram(List.of()), one, files.resolve("first"));
        Object edit = call.run(
                        new ImportFiles(),
                        Stream.concat(Stream.of(one), list(files.resolve("first")).stream())
                                .toArray())
                .json()
                .get("edit");
        assertEquals(null, edit);
    }

    private static <T extends Record> void assertSameRecords(Kind<T> kind, Program one, Program other) {
        assertEquals(counted(one.table(kind).stream()), counted(other.table(kind).stream()), kind.table());
    }

    private static <T> Map<T, Long> counted(Stream<T> records) {
        return records.collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    }

    private Program now(Path folder) {
        return folders.open(folder, call.clock()).now();
    }

    private static List<Path> list(Path folder) throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
