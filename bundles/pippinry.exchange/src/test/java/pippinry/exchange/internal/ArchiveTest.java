package pippinry.exchange.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pippinry.commandline.Answer;
import pippinry.commandline.CallRefused;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kinds;
import pippinry.model.record.Photo;
import pippinry.model.value.Subject;

class ArchiveTest {

    @TempDir
    private Path files;

    private Path larkmoor;
    private Path archive;
    private final MemoryStore.Folders folders = new MemoryStore.Folders();
    private final CallInTest call = new CallInTest(folders);

    @BeforeEach
    void places() {
        larkmoor = files.resolve("larkmoor");
        archive = files.resolve("larkmoor.jsonl");
    }

    /** An hour passes between edits. */
    private static final class Hours extends Clock {

        private Instant now = Instant.parse("2012-03-01T08:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            now = now.plus(Duration.ofHours(1));
            return now;
        }
    }

    private ProgramStore lived(long seed) throws Exception {
        ProgramStore store = folders.create(larkmoor, new Hours());
        GeneratedProgram generated = new GeneratedProgram(seed);
        store.apply(generated.edit(6));
        store.apply(generated.edit(3));
        Edit.Draft changes = Edit.by("OD", "scores put right");
        store.now().table(Kinds.SCORES).rows().forEach(row -> {
            if (row.id() % 3 == 0) {
                changes.remove(Kinds.SCORES, row.id());
            } else if (row.id() % 3 == 1) {
                changes.replace(Kinds.SCORES, row.id(), generated.row(Kinds.SCORES));
            }
        });
        store.apply(changes.done());
        store.takeBack(3, "IN");
        store.apply(generated.edit(2));
        store.takeBack(4, "IN");
        return store;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aProgramComesBackFromItsArchiveAsItWas(long seed) throws Exception {
        ProgramStore store = lived(seed);
        call.run(new ExportProgram(List.of()), larkmoor, archive, "--archive");
        Path again = files.resolve("again");
        call.run(new ImportFiles(), again, archive);
        ProgramStore back = folders.open(again, call.clock());
        assertSame(store.now(), back.now());
        assertEquals(store.history(), back.history());
        for (long edit = 1; edit <= store.now().edit(); edit++) {
            assertEquals(store.changesOf(edit), back.changesOf(edit));
        }
        Path second = files.resolve("second.jsonl");
        call.run(new ExportProgram(List.of()), again, second, "--archive");
        assertArrayEquals(Files.readAllBytes(archive), Files.readAllBytes(second));
    }

    private static void assertSame(Program one, Program other) {
        Kinds.ALL.forEach(
                kind -> assertEquals(one.table(kind).rows(), other.table(kind).rows(), kind.table()));
        assertEquals(one.edit(), other.edit());
        assertEquals(one.time(), other.time());
    }

    @Test
    void theFirstLineSaysWhatItIsAndEachLineIsOneRecordOrEdit() throws Exception {
        call.run(new NewProgram(), larkmoor, "--crop", "apple", "--name", "Larkmoor");
        call.run(new ExportProgram(List.of()), larkmoor, archive, "--archive");
        assertEquals(
                List.of(
                        "{\"format\":\"pippinry archive\",\"version\":1,\"program\":\"Larkmoor\",\"edits\":1}",
                        "{\"table\":\"settings\",\"id\":0,\"row\":{\"key\":\"name\",\"value\":\"Larkmoor\"}}",
                        "{\"table\":\"settings\",\"id\":1,\"row\":{\"key\":\"crop\",\"value\":\"apple\"}}",
                        "{\"edit\":1,\"time\":\"2026-03-27T10:00:00Z\",\"author\":\"IN\",\"reason\":\"new program\",\"records\":2}",
                        "{\"of\":1,\"table\":\"settings\",\"id\":0,\"after\":{\"key\":\"name\",\"value\":\"Larkmoor\"}}",
                        "{\"of\":1,\"table\":\"settings\",\"id\":1,\"after\":{\"key\":\"crop\",\"value\":\"apple\"}}"),
                Files.readAllLines(archive));
        assertTrue(Files.readString(archive).endsWith("}\n"));
    }

    @Test
    void theRecordsOfAnArchiveComeIntoAnotherProgram() throws Exception {
        lived(7);
        call.run(new ExportProgram(List.of()), larkmoor, archive, "--archive");
        Path other = files.resolve("other");
        folders.create(other, call.clock());
        call.run(new ImportFiles(), other, archive);
        Program come = folders.open(other, call.clock()).now();
        assertEquals(1, come.edit());
        Program was = folders.open(larkmoor, call.clock()).now();
        Kinds.ALL.forEach(kind -> assertEquals(
                was.table(kind).stream().toList(), come.table(kind).stream().toList(), kind.table()));
        Answer twice = call.run(new ImportFiles(), other, archive);
        assertEquals(null, twice.json().get("edit"));
    }

    @Test
    void photosTravelBesideIt() throws Exception {
        ProgramStore store = folders.create(larkmoor, new Hours());
        Files.createDirectories(larkmoor.resolve("photos/2026"));
        Files.write(larkmoor.resolve("photos/2026/0412.jpg"), new byte[] {1, 2, 3});
        store.apply(Edit.by("IN", "photos")
                .put(Kinds.GENOTYPES, new GeneratedProgram(1).row(Kinds.GENOTYPES))
                .done());
        Subject subject = new Subject(
                store.now().table(Kinds.GENOTYPES).rows().get(0).value().code().text());
        store.apply(Edit.by("IN", "photos")
                .put(Kinds.PHOTOS, new Photo(subject, Optional.empty(), "2026/0412.jpg"))
                .put(Kinds.PHOTOS, new Photo(subject, Optional.empty(), "2026/lost.jpg"))
                .done());
        Answer out = call.run(new ExportProgram(List.of()), larkmoor, archive, "--archive");
        assertEquals(1, out.json().get("photos"));
        assertEquals(
                List.of(larkmoor.resolve("photos/2026/lost.jpg") + ": this photo is not there"),
                out.json().get("warnings"));
        assertTrue(Files.exists(files.resolve("larkmoor-photos/2026/0412.jpg")));
        Path again = files.resolve("again");
        call.run(new ImportFiles(), again, archive);
        assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(again.resolve("photos/2026/0412.jpg")));
    }

    @Test
    void aPhotoBehindALinkOutOfItsFolderStaysWhereItIs() throws Exception {
        ProgramStore store = folders.create(larkmoor, new Hours());
        Files.writeString(files.resolve("secret"), "mine");
        Files.createDirectories(larkmoor.resolve("photos"));
        Files.createSymbolicLink(larkmoor.resolve("photos/out"), files);
        store.apply(Edit.by("IN", "photos")
                .put(Kinds.BLOCKS, new GeneratedProgram(1).row(Kinds.BLOCKS))
                .done());
        Subject subject = new Subject(
                store.now().table(Kinds.BLOCKS).rows().get(0).value().block().text());
        store.apply(Edit.by("IN", "photos")
                .put(Kinds.PHOTOS, new Photo(subject, Optional.empty(), "out/secret"))
                .done());
        Answer out = call.run(new ExportProgram(List.of()), larkmoor, archive, "--archive");
        assertEquals(0, out.json().get("photos"));
        assertTrue(Files.notExists(files.resolve("larkmoor-photos/out/secret")));
    }

    @Test
    void anArchiveWhosePhotosLeaveTheFolderIsRefused() throws Exception {
        lived(8);
        call.run(new ExportProgram(List.of()), larkmoor, archive, "--archive");
        String text = Files.readString(archive);
        List<String> lines = new ArrayList<>(text.lines().toList());
        int at = 0;
        while (!lines.get(at).startsWith("{\"table\":\"photos\"")) {
            at++;
        }
        lines.set(at, "{\"table\":\"photos\",\"id\":0,\"row\":{\"subject\":\"X\",\"file\":\"../../evil\"}}");
        Files.write(archive, lines);
        assertTrue(
                refused().contains(" line " + (at + 1) + ", column file: '../../evil'; expected a path within"),
                refused());
        assertTrue(Files.notExists(files.resolve("again")));
        try (Stream<Path> left = Files.list(files)) {
            assertEquals(
                    0,
                    left.filter(file -> file.getFileName().toString().startsWith(".again"))
                            .count());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "\"version\":1;\"version\":2;written by a newer Pippinry",
                "\"edits\":1;\"edits\":2;is not whole: 2 edits are announced",
                "\"records\":2;\"records\":3;is not whole: 1 edits are announced",
                "\"records\":2;\"records\":1;does not belong to the edit before it",
                "\"of\":1;\"of\":2;does not belong to the edit before it",
                "\"edit\":1,;\"edit\":3,;edit 3 stands where it does not follow",
                "{\"table\":\"settings\",\"id\":0;{\"table\":\"secrets\",\"id\":0;'secrets' is no table",
                "\"row\":{\"key\":\"name\";\"row\":{\"kee\":\"name\";'kee' is no column of settings",
                "\"row\":{\"key\":\"name\";\"row\":{\"key\":\"nom\";its history does not lead to its records in settings",
                "\"time\":\"2026;\"time\":\"soon;is no time such as",
                "\"after\":{\"key\":\"name\";\"after\":{\"key\":\"nom\";its history does not lead to its records",
                "{\"table\":\"settings\",\"id\":1;{\"table\":\"settings\",\"id\":7;its history does not lead to its records",
                "{\"of\":1,\"table\":\"settings\",\"id\":1;{\"of\":1,\"table\":\"settings\",\"id\":5;does not come out as the archive tells",
                "\"author\":\"IN\";\"author\":\"IN\",\"author\":\"IN\";this is no line of an archive"
            })
    void anArchiveThatIsNotSoundIsRefused(String was, String is, String message) throws Exception {
        call.run(new NewProgram(), larkmoor, "--crop", "apple", "--name", "Larkmoor");
        call.run(new ExportProgram(List.of()), larkmoor, archive, "--archive");
        String text = Files.readString(archive);
        assertTrue(text.contains(was));
        Files.writeString(archive, text.replaceFirst(Pattern.quote(was), is));
        assertTrue(refused().contains(message), refused());
        assertTrue(Files.notExists(files.resolve("again")));
    }

    @Test
    void anArchiveThatWasCutOffAnywhereIsRefused() throws Exception {
        lived(9);
        call.run(new ExportProgram(List.of()), larkmoor, archive, "--archive");
        byte[] whole = Files.readAllBytes(archive);
        Random random = new Random(9);
        for (int i = 0; i < 40; i++) {
            int length = "{\"format\":\"pippinry archive\"".length() + random.nextInt(whole.length - 60);
            Files.write(archive, Arrays.copyOf(whole, length));
            refused();
        }
    }

    @Test
    void anArchiveIsNotBroughtBackOverOtherThings() throws Exception {
        lived(10);
        call.run(new ExportProgram(List.of()), larkmoor, archive, "--archive");
        Files.createDirectories(files.resolve("again"));
        Files.writeString(files.resolve("again/letter.txt"), "mine");
        assertTrue(refused().contains("holds other things"));
    }

    @Test
    void aFileThatIsThereIsNotWrittenOver() throws Exception {
        lived(11);
        Files.writeString(archive, "mine");
        CallRefused refused = assertThrows(
                CallRefused.class, () -> call.run(new ExportProgram(List.of()), larkmoor, archive, "--archive"));
        assertEquals(archive + " is there already; name a new file, or add --replace", refused.getMessage());
        assertEquals("mine", Files.readString(archive));
    }

    private String refused() {
        return assertThrows(CallRefused.class, () -> call.run(new ImportFiles(), files.resolve("again"), archive))
                .getMessage();
    }
}
