package pippinry.store.internal;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Really kills processes; {@code integration-tests/kill-store} does it a thousand times. */
class KilledWhileEditingTest {

    private static final int ROUNDS = 10;

    @TempDir
    Path temp;

    @Test
    void noConfirmedEditIsLostAndNoneIsThereByHalf() throws Exception {
        KilledWhileEditing kills = new KilledWhileEditing(temp.resolve("larkmoor"), 26);
        for (int round = 0; round < ROUNDS; round++) {
            kills.round();
        }
    }
}
