package pippinry.panels;

import java.awt.Color;

/**
 * The colours by what they are for. One accent; colour never carries a meaning alone. Series colours are those of Okabe
 * &amp; Ito (2008, Color Universal Design), safe for colour-blind eyes.
 *
 * @param ground behind the cards
 * @param card what things stand on
 * @param line borders and grids
 * @param text words and figures
 * @param quiet words that explain
 * @param accent the one green: the main button, the marked thing, full bars
 * @param soft a pale accent for areas and shades
 * @param warning overdue, refused, doubtful
 * @param bloom flowers
 * @param onAccent words on the accent
 */
public record Palette(
        Color ground,
        Color card,
        Color line,
        Color text,
        Color quiet,
        Color accent,
        Color soft,
        Color warning,
        Color bloom,
        Color onAccent) {

    private static final Palette LIGHT = new Palette(
            new Color(0xF4F4F0),
            Color.WHITE,
            new Color(0xE2E4DE),
            new Color(0x1F2421),
            new Color(0x616A65),
            new Color(0x3D6B4D),
            new Color(0xDCE7DE),
            new Color(0xB4460F),
            new Color(0xE9A3B8),
            Color.WHITE);
    private static final Palette DARK = new Palette(
            new Color(0x1D201E),
            new Color(0x272B28),
            new Color(0x3A403C),
            new Color(0xE6E9E4),
            new Color(0xA3ACA5),
            new Color(0x86B892),
            new Color(0x36473B),
            new Color(0xF0925C),
            new Color(0xC77E95),
            new Color(0x15201A));

    private static final double EQUAL_CONTRAST = 0.179;

    private static final Color[] SERIES = {
        new Color(0x0072B2),
        new Color(0xE69F00),
        new Color(0x009E73),
        new Color(0xCC79A7),
        new Color(0x56B4E9),
        new Color(0xD55E00),
        new Color(0xF0E442),
        new Color(0x7F7F7F)
    };

    /** For paper and for the light window. */
    public static Palette light() {
        return LIGHT;
    }

    public static Palette dark() {
        return DARK;
    }

    /** One of eight colours to tell series apart, beside their shapes or names. */
    public static Color series(int index) {
        return SERIES[Math.floorMod(index, SERIES.length)];
    }

    /** A shade between card and accent. @param share 0 is the card, 1 the accent */
    public Color shade(double share) {
        double part = Math.max(0, Math.min(1, share));
        return new Color(
                mix(card.getRed(), accent.getRed(), part),
                mix(card.getGreen(), accent.getGreen(), part),
                mix(card.getBlue(), accent.getBlue(), part));
    }

    /**
     * Black or white, whichever reads better on this colour: the contrast of the two is equal where the relative luminance
     * is 0.179 (Web Content Accessibility Guidelines 2.1, W3C 2018).
     */
    public static Color inkOn(Color ground) {
        double luminance = 0.2126 * linear(ground.getRed())
                + 0.7152 * linear(ground.getGreen())
                + 0.0722 * linear(ground.getBlue());
        return luminance > EQUAL_CONTRAST ? Color.BLACK : Color.WHITE;
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static int mix(int from, int to, double part) {
        return (int) Math.round(from + (to - from) * part);
    }
}
