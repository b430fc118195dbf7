package pippinry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Inside the framework the storage engine finds our classes and we find its own. */
class StoredProgramIT {

    @Test
    void aProgramIsThereAgainAndItsEditsAreAnnounced() throws Exception {
        try (RunningProgram program = RunningProgram.of("apple")) {
            assertEquals(List.of("FIE", "edit 1"), program.ask("keeps"));
        }
    }
}
