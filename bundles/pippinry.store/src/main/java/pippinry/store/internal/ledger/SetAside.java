package pippinry.store.internal.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;

/** Where a program folder keeps what was found damaged: nothing is thrown away that a person may still want to look at. */
public final class SetAside {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

    private final Path folder;
    private final Clock clock;

    public SetAside(Path program, Clock clock) {
        this.folder = program.resolve("set-aside");
        this.clock = clock;
    }

    /** Moves a file or folder away; gives its new place. */
    public Path move(Path from) throws IOException {
        return Files.move(from, place(from));
    }

    Path copy(Path from) throws IOException {
        return Files.copy(from, place(from));
    }

    Path keep(String name, byte[] bytes) throws IOException {
        return Files.write(place(folder.resolve(name)), bytes);
    }

    private Path place(Path like) throws IOException {
        Files.createDirectories(folder);
        String name = like.getFileName() + "-" + STAMP.format(LocalDateTime.now(clock));
        Path place = folder.resolve(name);
        for (int more = 2; Files.exists(place); more++) {
            place = folder.resolve(name + "-" + more);
        }
        return place;
    }
}
