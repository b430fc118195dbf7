package pippinry.workbench.internal;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/** The person's own folder for how the window looks: it belongs to the person, not to a program. */
public final class OwnFolder {

    private final Path folder;

    public OwnFolder(Path folder) {
        this.folder = folder;
    }

    /** Where the system wants such things: XDG on Linux, Library on macOS, AppData on Windows. */
    public static OwnFolder ofThisPerson(Map<String, String> environment) {
        Path home = Path.of(System.getProperty("user.home"));
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        if (system.contains("win") && environment.containsKey("APPDATA")) {
            return new OwnFolder(Path.of(environment.get("APPDATA"), "Pippinry"));
        }
        if (system.contains("mac")) {
            return new OwnFolder(home.resolve("Library/Application Support/Pippinry"));
        }
        String config = environment.getOrDefault("XDG_CONFIG_HOME", "");
        return new OwnFolder((config.isEmpty() ? home.resolve(".config") : Path.of(config)).resolve("pippinry"));
    }

    /** A file of this name, whose folder is there. */
    public Path file(String name) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot keep the window's state in " + folder, e);
        }
        return folder.resolve(name);
    }

    public Optional<String> remembered(String key) {
        return Optional.ofNullable(read().getProperty(key));
    }

    public void remember(String key, String value) {
        Properties all = read();
        all.setProperty(key, value);
        try (Writer writer = Files.newBufferedWriter(file("window.properties"))) {
            all.store(writer, null);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot keep the window's state in " + folder, e);
        }
    }

    private Properties read() {
        Properties all = new Properties();
        Path file = folder.resolve("window.properties");
        if (Files.isReadable(file)) {
            try (Reader reader = Files.newBufferedReader(file)) {
                all.load(reader);
            } catch (IOException | IllegalArgumentException e) {
                // A window whose state cannot be read opens as on the first day.
                return new Properties();
            }
        }
        return all;
    }
}
