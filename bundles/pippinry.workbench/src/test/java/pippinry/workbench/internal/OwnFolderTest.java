package pippinry.workbench.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class OwnFolderTest {

    @TempDir
    Path folder;

    @Test
    void whatIsRememberedIsThereInTheNextWindow() {
        new OwnFolder(folder.resolve("new")).remember("desk", "ROW");
        new OwnFolder(folder.resolve("new")).remember("theme", "dark");
        assertEquals(Optional.of("ROW"), new OwnFolder(folder.resolve("new")).remembered("desk"));
    }

    @Test
    void aWindowWhoseStateCannotBeReadOpensAsOnTheFirstDay() throws Exception {
        Files.write(folder.resolve("window.properties"), new byte[] {'d', '=', '\\', 'u', 'x', (byte) 0xFF});
        assertEquals(Optional.empty(), new OwnFolder(folder).remembered("desk"));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void onLinuxItStandsWhereTheSystemWantsIt() {
        OwnFolder own = OwnFolder.ofThisPerson(Map.of("XDG_CONFIG_HOME", folder.toString()));
        assertEquals(folder.resolve("pippinry").resolve("x"), own.file("x"));
    }
}
