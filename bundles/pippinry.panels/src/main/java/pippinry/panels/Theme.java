package pippinry.panels;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Color;
import java.util.HashMap;
import java.util.List;
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
        keys.put("Button.default.focusedBackground", hex(palette.accent()));
        keys.put("Button.default.foreground", hex(palette.onAccent()));
        keys.put("Button.default.borderColor", hex(palette.accent()));
        keys.put("Label.disabledForeground", hex(palette.quiet()));
        keys.put("ScrollBar.width", "10");
        keys.put("ScrollBar.thumbArc", "999");
        keys.put("SplitPane.background", hex(palette.ground()));
        keys.put("SplitPane.dividerSize", "12");
        keys.put("SplitPaneDivider.style", "plain");
        tables(keys);
        tabs(keys);
        for (String marked : List.of("Table", "List", "MenuItem", "ComboBox")) {
            keys.put(marked + ".selectionBackground", hex(palette.soft()));
            keys.put(marked + ".selectionForeground", hex(palette.text()));
            keys.put(marked + ".selectionInactiveBackground", hex(palette.soft()));
            keys.put(marked + ".selectionInactiveForeground", hex(palette.text()));
        }
        return keys;
    }

    private void tables(Map<String, String> keys) {
        keys.put("Table.rowHeight", "28");
        keys.put("Table.showHorizontalLines", "true");
        keys.put("Table.gridColor", hex(palette.line()));
        keys.put("Table.cellMargins", "2,8,2,8");
        keys.put("Table.focusCellBackground", hex(palette.soft()));
        keys.put("TableHeader.cellMargins", "4,8,4,8");
        keys.put("TableHeader.background", hex(palette.card()));
        keys.put("TableHeader.foreground", hex(palette.quiet()));
        keys.put("TableHeader.separatorColor", hex(palette.card()));
        keys.put("TableHeader.bottomSeparatorColor", hex(palette.line()));
    }

    /** Several panels in one spot: their names stand where the title of a single one does. */
    private void tabs(Map<String, String> keys) {
        keys.put("TabbedPane.font", "bold +1");
        keys.put("TabbedPane.tabHeight", "37");
        keys.put("TabbedPane.tabInsets", "4,12,4,12");
        keys.put("TabbedPane.foreground", hex(palette.quiet()));
        keys.put("TabbedPane.selectedForeground", hex(palette.text()));
        keys.put("TabbedPane.hoverColor", hex(palette.ground()));
        keys.put("TabbedPane.underlineColor", hex(palette.accent()));
        keys.put("TabbedPane.inactiveUnderlineColor", hex(palette.accent()));
        keys.put("TabbedPane.tabSelectionHeight", "2");
        keys.put("TabbedPane.contentAreaColor", hex(palette.line()));
    }

    private static String hex(Color colour) {
        return "#%06x".formatted(colour.getRGB() & 0xFFFFFF);
    }
}
