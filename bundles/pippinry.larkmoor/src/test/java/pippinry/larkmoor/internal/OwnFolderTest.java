package pippinry.larkmoor.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OwnFolderTest {

    @ParameterizedTest
    @CsvSource({
        "Linux, , /home/in/.local/share/pippinry",
        "Linux, /data, /data/pippinry",
        "Linux, relative, /home/in/.local/share/pippinry",
        "Mac OS X, , /home/in/Library/Application Support/Pippinry",
        "Windows 11, , /home/in/AppData/Local/Pippinry"
    })
    void dataLieWhereThatSystemKeepsThem(String system, String variable, String expected) {
        OwnFolder folder = new OwnFolder(system, any -> variable, Path.of("/home/in"));
        assertEquals(Path.of(expected), folder.path());
    }
}
