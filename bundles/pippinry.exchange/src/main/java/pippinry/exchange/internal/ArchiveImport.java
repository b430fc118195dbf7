package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.exchange.internal.archive.ArchiveReader;
import pippinry.exchange.internal.archive.Photos;
import pippinry.exchange.internal.archive.Restoring;
import pippinry.exchange.internal.tables.FileRefused;
import pippinry.model.Program;

/** Brings a whole program back into a folder of its own, with its history. */
final class ArchiveImport {

    private final Call call;
    private final Path archive;
    private final Path folder;

    ArchiveImport(Call call, Path archive, Path folder) {
        this.call = call;
        this.archive = archive;
        this.folder = folder;
    }

    /** The program is made under another name first, so that nobody takes half of it for the whole. */
    Answer run() throws CallRefused, IOException {
        refuseIfFilled();
        Path whole = folder.toAbsolutePath().normalize();
        Files.createDirectories(whole.getParent());
        Path part = Files.createTempDirectory(whole.getParent(), "." + whole.getFileName() + "-");
        try {
            Program program = restore(part);
            Photos photos = Photos.in(archive, part);
            photos.copy(program);
            Files.deleteIfExists(whole);
            Files.move(part, whole);
            return answer(program, photos);
        } catch (FileRefused e) {
            throw new CallRefused("Nothing was stored. " + e.getMessage());
        } finally {
            remove(part);
        }
    }

    private void refuseIfFilled() throws CallRefused, IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            if (files.findAny().isPresent()) {
                throw new CallRefused(folder + " holds other things; a program is brought back into an empty folder");
            }
        }
    }

    private Program restore(Path part) throws FileRefused, IOException {
        double size = Files.size(archive) + 1.0;
        Progress progress = new Progress(call, "Bringing back " + archive.getFileName());
        try (Restoring restoring =
                new Restoring(archive, call.folders(), part, call.clock().getZone())) {
            new ArchiveReader(archive).read(restoring, passed -> progress.tell(passed / size));
            Program program = restoring.finish();
            progress.tell(1);
            return program;
        }
    }

    private Answer answer(Program program, Photos photos) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("folder", folder.toString());
        json.put("edits", program.edit());
        json.put("photos", photos.copied());
        json.put("warnings", photos.warnings());
        StringBuilder words = new StringBuilder();
        List<String> warnings = photos.warnings();
        warnings.forEach(warning -> words.append("Note: ").append(warning).append('\n'));
        words.append("The program is in ")
                .append(folder)
                .append(" as it was, with all its ")
                .append(program.edit())
                .append(" edits and ")
                .append(photos.copied())
                .append(" photos.");
        return Answer.of(json, words.toString());
    }

    private static void remove(Path folder) throws IOException {
        if (Files.notExists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
