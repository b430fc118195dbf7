package pippinry.season.internal.due;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.TaskSource;

class DueBarsTest {

    private static final LocalDate TODAY = LocalDate.parse("2026-03-27");
    private static final int ROOM = 40;

    @Test
    void allInkLiesInsideThePicture() {
        DueBars bars = new DueBars(list(40));
        int width = 483;
        int height = (int) Math.round(width * bars.aspect());
        BufferedImage image = new BufferedImage(width + 2 * ROOM, height + 2 * ROOM, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.translate(ROOM, ROOM);
        bars.paint(graphics, width, height);
        int inside = 0;
        int outside = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                boolean in = x >= ROOM && x < ROOM + width && y >= ROOM && y < ROOM + height;
                if (image.getRGB(x, y) != Color.WHITE.getRGB()) {
                    inside += in ? 1 : 0;
                    outside += in ? 0 : 1;
                }
            }
        }
        assertTrue(inside > 2000, "ink: " + inside);
        assertEquals(0, outside, "ink outside the picture");
    }

    private static DueList list(int tasks) {
        TaskSource source = (program, today, from, to) -> java.util.stream.IntStream.range(0, tasks)
                .mapToObj(i -> new DueTask(
                        "26-0" + i + "-with-a-long-name",
                        "sow",
                        TODAY.minusDays(300).plusDays(i * 9),
                        TODAY.minusDays(290).plusDays(i * 9),
                        "Sow a lot with a very long description of what there is to be done and more of it " + i,
                        "",
                        Optional.empty()))
                .toList();
        return DueList.of(Program.empty(), List.of(source), TODAY, TODAY.plusWeeks(8));
    }
}
