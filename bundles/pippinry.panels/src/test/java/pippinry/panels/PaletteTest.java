package pippinry.panels;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Words can be read on what they stand on: contrast by the definition of the Web Content Accessibility Guidelines 2.1
 * (W3C 2018), success criterion 1.4.3, which asks for 4.5 to 1.
 */
class PaletteTest {

    private static final double ENOUGH = 4.5;

    static Stream<Palette> palettes() {
        return Stream.of(Palette.light(), Palette.dark());
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void wordsStandOutFromCardAndGround(Palette palette) {
        for (Color ink : new Color[] {palette.text(), palette.quiet(), palette.warning()}) {
            assertTrue(contrast(ink, palette.card()) >= ENOUGH, ink + " on the card");
            assertTrue(contrast(ink, palette.ground()) >= ENOUGH, ink + " on the ground");
        }
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void wordsStandOutFromTheAccent(Palette palette) {
        assertTrue(contrast(palette.onAccent(), palette.accent()) >= ENOUGH);
        assertTrue(contrast(palette.accent(), palette.card()) >= ENOUGH);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void inkStandsOutFromEveryShade(Palette palette) {
        for (int share = 0; share <= 10; share++) {
            Color ground = palette.shade(share / 10.0);
            assertTrue(contrast(Palette.inkOn(ground), ground) >= ENOUGH, share + " of 10: " + ground);
        }
    }

    private static double contrast(Color one, Color other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
