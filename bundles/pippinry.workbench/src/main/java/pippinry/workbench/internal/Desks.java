package pippinry.workbench.internal;

import java.util.List;
import pippinry.panels.PanelProvider.Desk;

/** What the desks are called. */
public final class Desks {

    public static final List<Desk> ALL = List.of(Desk.values());

    private Desks() {}

    public static String title(Desk desk) {
        return switch (desk) {
            case WINTER -> "Winter desk";
            case BLOOM -> "Bloom desk";
            case ROW -> "Row desk";
            case FRUIT -> "Fruit desk";
        };
    }

    /** The desk for a month of the northern year (common practice, no source). */
    public static Desk ofMonth(int month) {
        return switch (month) {
            case 11, 12, 1, 2, 3 -> Desk.WINTER;
            case 4, 5 -> Desk.BLOOM;
            case 6, 7 -> Desk.ROW;
            default -> Desk.FRUIT;
        };
    }
}
