package pippinry.nursery.internal;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import pippinry.panels.Picture;

/** How many pixels a picture paints inside its rectangle, and how many beside it. */
record Ink(int inside, int outside) {

    private static final int ROOM = 60;

    static Ink of(Picture picture, int width, int height) {
        BufferedImage image = new BufferedImage(width + 2 * ROOM, height + 2 * ROOM, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.translate(ROOM, ROOM);
        picture.paint(graphics, width, height);
        graphics.dispose();
        int inside = 0;
        int all = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                if (image.getRGB(x, y) != Color.WHITE.getRGB()) {
                    all++;
                    inside += x >= ROOM && x < ROOM + width && y >= ROOM && y < ROOM + height ? 1 : 0;
                }
            }
        }
        return new Ink(inside, all - inside);
    }
}
