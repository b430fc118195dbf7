package pippinry.larkmoor.internal;

import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** Where a person's own data lie on this kind of computer. */
final class OwnFolder {

    private final String system;
    private final UnaryOperator<String> environment;
    private final Path home;

    /**
     * @param system the operating system's name
     * @param environment gives null for a variable that is not set
     */
    OwnFolder(String system, UnaryOperator<String> environment, Path home) {
        this.system = system.toLowerCase(Locale.ROOT);
        this.environment = environment;
        this.home = home;
    }

    static OwnFolder here() {
        return new OwnFolder(System.getProperty("os.name"), System::getenv, Path.of(System.getProperty("user.home")));
    }

    Path path() {
        if (system.startsWith("windows")) {
            return set("LOCALAPPDATA", home.resolve("AppData").resolve("Local")).resolve("Pippinry");
        }
        if (system.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Pippinry");
        }
        return set("XDG_DATA_HOME", home.resolve(".local").resolve("share")).resolve("pippinry");
    }

    /** A relative path in such a variable is not valid and counts as none (XDG Base Directory Specification). */
    private Path set(String variable, Path otherwise) {
        String value = environment.apply(variable);
        return value == null || value.isBlank() || !Path.of(value).isAbsolute() ? otherwise : Path.of(value);
    }
}
