package pippinry.larkmoor.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SittingTest {

    @TempDir
    private Path folder;

    @Test
    void sittingsComeInTheOrderOfTheirNumbers() throws IOException {
        sitting("010-2020-05-01-later", "OD: Bloom");
        sitting("002-2019-05-01-earlier", "IN: Notebooks: 2011 to 2014");
        List<Sitting> sittings = Sitting.in(folder);
        assertEquals(
                List.of(LocalDate.parse("2019-05-01"), LocalDate.parse("2020-05-01")),
                sittings.stream().map(Sitting::day).toList());
        assertEquals("IN", sittings.get(0).author());
        assertEquals("Notebooks: 2011 to 2014", sittings.get(0).reason());
        assertEquals(1, sittings.get(0).files().size());
    }

    @Test
    void aSittingWithoutItsHandIsRefused() throws IOException {
        sitting("001-2019-05-01-x", "no hand here");
        assertTrue(assertThrows(IOException.class, () -> Sitting.in(folder))
                .getMessage()
                .contains("HAND: reason"));
    }

    @Test
    void timeNeverRunsBackwardsOnOneDay() {
        DayClock clock = new DayClock(ZoneId.of("UTC"));
        clock.setTo(LocalDate.parse("2019-05-01"));
        var first = clock.instant();
        clock.setTo(LocalDate.parse("2019-05-01"));
        assertTrue(clock.instant().isAfter(first));
        assertEquals(LocalDate.parse("2019-05-01"), LocalDate.now(clock));
    }

    private void sitting(String name, String reason) throws IOException {
        Path sitting = Files.createDirectories(folder.resolve(name));
        Files.writeString(sitting.resolve("reason.txt"), reason + "\n");
        Files.writeString(sitting.resolve("genotypes.csv"), "code\nFIE\n");
    }
}
