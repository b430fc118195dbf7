package pippinry.host;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

class CacheTest {

    @Test
    void twoProcessesWouldHaveFoldersOfTheirOwnAndNeitherLeavesAnything() throws IOException {
        Cache one = Cache.ofThisProcess();
        Cache other = Cache.ofThisProcess();
        Files.writeString(
                Files.createDirectories(one.folder().resolve("bundle1/data")).resolve("file"), "x");
        assertFalse(one.folder().equals(other.folder()));
        one.remove();
        other.remove();
        other.remove();
        assertFalse(Files.exists(one.folder()) || Files.exists(other.folder()));
    }
}
