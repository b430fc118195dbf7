package pippinry.model;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.RowReader;
import pippinry.model.record.Score;

/** An edit costs as much in a large program as in a small one, but for a level more of the trees; counted, not timed. */
class CostOfAnEditTest {

    private static final Instant NOW = Instant.parse("2026-03-27T10:00:00Z");
    private static final int WARM = 20;

    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @Test
    void anEditMakesAsManyBytesOfNodesAtAThousandPlantsAsAtAHundredThousand() throws Exception {
        long small = bytesOfAnEdit(1_000);
        long large = bytesOfAnEdit(100_000);
        assertTrue(large < small * 1.5, small + " bytes at 1,000 plants, " + large + " at 100,000");
    }

    /** The least of some edits: the others paid for classes that were loaded meanwhile. */
    private long bytesOfAnEdit(int plants) throws Exception {
        Program program = Program.empty().with(many(plants), 1, NOW);
        long least = Long.MAX_VALUE;
        for (int i = 0; i < WARM; i++) {
            Edit edit = Edit.by("IN", "one of each")
                    .put(Kinds.PLANTS, plant(new RowReader<>(Kinds.PLANTS), plants / 2))
                    .put(Kinds.SCORES, score(new RowReader<>(Kinds.SCORES), plants / 3))
                    .done();
            long before = threads.getCurrentThreadAllocatedBytes();
            program = program.apply(edit, NOW).program();
            least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
        }
        return least;
    }

    private static List<Settled<?>> many(int plants) throws CellRefused {
        RowReader<Plant> plantReader = new RowReader<>(Kinds.PLANTS);
        RowReader<Score> scoreReader = new RowReader<>(Kinds.SCORES);
        List<Settled<?>> many = new ArrayList<>();
        for (int i = 0; i < plants; i++) {
            many.add(new Settled<>(Kinds.PLANTS, i, Optional.empty(), Optional.of(plant(plantReader, i))));
            many.add(new Settled<>(Kinds.SCORES, i, Optional.empty(), Optional.of(score(scoreReader, i))));
        }
        return many;
    }

    /** The underscore keeps the check character out of it. */
    private static Plant plant(RowReader<Plant> reader, int i) throws CellRefused {
        return reader.begin().set("tag", "P_" + i).read();
    }

    private static Score score(RowReader<Score> reader, int i) throws CellRefused {
        return reader.begin()
                .set("subject", "P_" + i)
                .set("trait", "brix")
                .set("value", "1" + i % 7)
                .read();
    }
}
