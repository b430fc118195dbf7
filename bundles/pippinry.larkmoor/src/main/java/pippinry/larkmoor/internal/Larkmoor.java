package pippinry.larkmoor.internal;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.List;
import java.util.Properties;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;
import pippinry.model.ask.RowsRefused;
import pippinry.model.ask.TableReader;
import pippinry.model.record.Kinds;
import pippinry.model.record.Setting;
import pippinry.model.value.Code;

/** The demo program: its seasons as plain tables beside the image, and the folder it is brought into. */
final class Larkmoor {

    /** Setting that tells a demo program from a person's own: only a folder with it is ever emptied. */
    static final String MARK = "demo";

    private final Path seasons;
    private final ProgramFolders folders;
    private final TableReader reader;

    Larkmoor(Path seasons, ProgramFolders folders, TableReader reader) {
        this.seasons = seasons;
        this.folders = folders;
        this.reader = reader;
    }

    /**
     * Brings all seasons in. The program is made beside its folder and moved there when it is whole, so that a broken
     * start leaves no half program.
     *
     * @param told how far it is, as words and a share of the whole
     */
    void bringInto(Path folder, Clock clock, BiConsumer<String, Double> told)
            throws IOException, RowsRefused, EditRefused {
        Path unfinished = folder.resolveSibling(
                folder.getFileName() + ".unfinished-" + ProcessHandle.current().pid());
        Tree.delete(unfinished);
        Files.createDirectories(unfinished.getParent());
        List<Sitting> sittings = Sitting.in(seasons);
        DayClock days = new DayClock(clock.getZone());
        days.setTo(sittings.get(0).day());
        try {
            try (ProgramStore store = folders.create(unfinished, days)) {
                store.apply(settings());
                for (int i = 0; i < sittings.size(); i++) {
                    told.accept("Bringing in Larkmoor", (double) i / sittings.size());
                    enter(store, days, sittings.get(i));
                }
            }
            told.accept("Bringing in Larkmoor", 1.0);
            move(unfinished, folder);
        } finally {
            Tree.delete(unfinished);
        }
    }

    private void enter(ProgramStore store, DayClock days, Sitting sitting)
            throws IOException, RowsRefused, EditRefused {
        days.setTo(sitting.day());
        store.apply(reader.read(store.now(), sitting.files(), true, sitting.author(), sitting.reason()));
    }

    private Edit settings() throws IOException {
        Properties properties = new Properties();
        try (Reader file = Files.newBufferedReader(seasons.resolve("program.properties"))) {
            properties.load(file);
        }
        properties.setProperty(MARK, "Larkmoor");
        Edit.Draft edit = Edit.by("IN", "Name and place of the program");
        for (String key : new TreeSet<>(properties.stringPropertyNames())) {
            edit.put(Kinds.SETTINGS, new Setting(Code.of(key), properties.getProperty(key)));
        }
        return edit.done();
    }

    private static void move(Path from, Path to) throws IOException {
        // An empty folder may stand there.
        Files.deleteIfExists(to);
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to);
        }
    }

    /** Removes the program in the folder, if it is a demo program and nobody has it open. */
    void startOver(Path folder, Clock clock) throws IOException, NotTheDemo {
        if (!folders.isProgram(folder)) {
            return;
        }
        try (ProgramStore store = folders.open(folder, clock)) {
            requireDemo(store, folder);
        }
        Tree.delete(folder);
    }

    static void requireDemo(ProgramStore store, Path folder) throws NotTheDemo {
        if (store.now().setting(MARK).isEmpty()) {
            throw new NotTheDemo(folder + " holds a program of your own; name another folder for the demo");
        }
    }

    /** The folder holds somebody's own program, which the demo does not touch. */
    static final class NotTheDemo extends Exception {

        private static final long serialVersionUID = 1;

        NotTheDemo(String message) {
            super(message);
        }
    }
}
