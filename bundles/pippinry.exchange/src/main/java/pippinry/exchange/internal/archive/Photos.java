package pippinry.exchange.internal.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Photo;

/** Carries the pictures of a program between its folder and the one beside its archive. */
public final class Photos {

    private static final String FOLDER = "photos";

    private final Path from;
    private final Path to;
    private final List<String> warnings = new ArrayList<>();
    private int copied;

    private Photos(Path from, Path to) {
        this.from = from;
        this.to = to;
    }

    public static Photos out(Path programFolder, Path archive) {
        return new Photos(programFolder.resolve(FOLDER), beside(archive));
    }

    public static Photos in(Path archive, Path programFolder) {
        return new Photos(beside(archive), programFolder.resolve(FOLDER));
    }

    /** The folder for the pictures of an archive, such as {@code larkmoor-photos} of {@code larkmoor.jsonl}. */
    static Path beside(Path archive) {
        String name = archive.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return archive.resolveSibling((dot <= 0 ? name : name.substring(0, dot)) + "-" + FOLDER);
    }

    /** Copies every picture that the program speaks of; one that is there already with other contents is left as it is. */
    public void copy(Program program) throws IOException {
        List<String> files = program.table(Kinds.PHOTOS).stream()
                .map(Photo::file)
                .filter(file -> !file.isEmpty())
                .distinct()
                .toList();
        for (String file : files) {
            copy(file);
        }
    }

    private void copy(String file) throws IOException {
        Path source = from.resolve(file).normalize();
        Path target = to.resolve(file).normalize();
        if (!Files.isRegularFile(source)) {
            warnings.add(source + ": this photo is not there");
        } else if (!source.toRealPath().startsWith(from.toRealPath()) || !staysInside(target)) {
            warnings.add(source + ": a link leads out of the folder of photos; not copied");
        } else if (Files.exists(target)) {
            if (Files.mismatch(source, target) >= 0) {
                warnings.add(target + ": another photo is there under this name; left as it is");
            }
        } else {
            Files.createDirectories(target.getParent());
            Files.copy(source, target);
            copied++;
        }
    }

    /** No folder on the way to the target is a link to somewhere else. */
    private boolean staysInside(Path target) throws IOException {
        for (Path at = target.getParent(); at != null && at.startsWith(to); at = at.getParent()) {
            if (Files.isSymbolicLink(at)) {
                return false;
            }
        }
        return target.startsWith(to);
    }

    public int copied() {
        return copied;
    }

    /** What was not copied, and why. */
    public List<String> warnings() {
        return warnings;
    }
}
