package pippinry.panels;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Color;
import java.util.HashMap;
import java.util.Map;

/** The look of the window, light or dark; install it on the event dispatch thread before any component is made. */
public enum Theme {
    LIGHT(Palette.light()),
    DARK(Palette.dark());

    private static final int FONT_SIZE = 13;

    private final Palette palette;

    Theme(Palette palette) {
        this.palette = palette;
    }

    public Palette palette() {
        return palette;
    }

    /** Sets fonts, colours and shapes of all components made from now on; those there are need an update. */
    public void install() {
        FlatInterFont.install();
        FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
        FlatLaf.setPreferredLightFontFamily(FlatInterFont.FAMILY_LIGHT);
        FlatLaf.setPreferredSemiboldFontFamily(FlatInterFont.FAMILY_SEMIBOLD);
        FlatLaf.setGlobalExtraDefaults(defaults());
        if (this == DARK) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
    }

    private Map<String, String> defaults() {
        Map<String, String> keys = new HashMap<>();
        keys.put("defaultFont", FONT_SIZE + " \"" + FlatInterFont.FAMILY + "\"");
        keys.put("@accentColor", hex(palette.accent()));
        keys.put("@background", hex(palette.card()));
        keys.put("@foreground", hex(palette.text()));
        keys.put("Component.arc", "6");
        keys.put("Button.arc", "6");
        keys.put("TextComponent.arc", "6");
        keys.put("Component.focusWidth", "1");
        keys.put("Component.borderColor", hex(palette.line()));
        keys.put("Button.borderColor", hex(palette.line()));
        keys.put("Button.margin", "4,12,4,12");
        keys.put("Button.default.background", hex(palette.accent()));
        keys.put("Button.default.foreground", hex(palette.onAccent()));
        keys.put("Button.default.borderColor", hex(palette.accent()));
        keys.put("Label.disabledForeground", hex(palette.quiet()));
        keys.put("ScrollBar.width", "10");
        keys.put("ScrollBar.thumbArc", "999");
        keys.put("SplitPane.dividerSize", "8");
        keys.put("SplitPaneDivider.style", "plain");
        keys.put("Table.rowHeight", "26");
        keys.put("Table.showHorizontalLines", "true");
        keys.put("Table.gridColor", hex(palette.line()));
        keys.put("Table.selectionBackground", hex(palette.soft()));
        keys.put("Table.selectionForeground", hex(palette.text()));
        keys.put("Table.selectionInactiveBackground", hex(palette.soft()));
        keys.put("Table.selectionInactiveForeground", hex(palette.text()));
        keys.put("TableHeader.separatorColor", hex(palette.line()));
        keys.put("TableHeader.bottomSeparatorColor", hex(palette.line()));
        keys.put("List.selectionBackground", hex(palette.soft()));
        keys.put("List.selectionForeground", hex(palette.text()));
        keys.put("TabbedPane.underlineColor", hex(palette.accent()));
        return keys;
    }

    private static String hex(Color colour) {
        return "#%06x".formatted(colour.getRGB() & 0xFFFFFF);
    }
}
