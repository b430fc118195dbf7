package pippinry.labels.internal.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Breaks a sheet into pages. A heading never stands last on a page, and is repeated where its lines go on. */
final class SheetPages {
    /** A heading or a line. */
    record Item(Optional<ScoreRow> row, String heading) {
        double height() {
            return row.isPresent() ? SheetGrid.LINE : SheetGrid.HEADING;
        }
    }

    private final double room;
    private final List<List<Item>> pages = new ArrayList<>();
    private List<Item> page = new ArrayList<>();
    private double used;

    private SheetPages(double room) {
        this.room = room;
    }

    static List<List<Item>> of(ScoreSheet sheet, SheetGrid grid) {
        SheetPages pages = new SheetPages(grid.room());
        sheet.groups().forEach(pages::add);
        pages.turn();
        return pages.pages;
    }

    private void add(RowGroup group) {
        if (group.rows().isEmpty()) {
            return;
        }
        if (used + SheetGrid.HEADING + SheetGrid.LINE > room) {
            turn();
        }
        put(new Item(Optional.empty(), group.heading()));
        for (ScoreRow row : group.rows()) {
            if (used + SheetGrid.LINE > room) {
                turn();
                put(new Item(Optional.empty(), group.heading() + ", continued"));
            }
            put(new Item(Optional.of(row), ""));
        }
    }

    private void put(Item item) {
        page.add(item);
        used += item.height();
    }

    private void turn() {
        if (!page.isEmpty()) {
            pages.add(page);
            page = new ArrayList<>();
            used = 0;
        }
    }
}
