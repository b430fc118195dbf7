package pippinry.demo;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** The 0.4 ha of Larkmoor: blocks, rows and places, and what stands where. */
final class Ground {

    /** Lots within 50 x 80 m; y grows uphill to the south-east, where the old trees stand. */
    private static final List<BlockPlan> BLOCKS = List.of(
            new BlockPlan(
                    "OLD", "tree", 4, 66, 1, 4, 10, 11, 3, "none", "orchard since about 1950", "standard", "old trees"),
            new BlockPlan(
                    "PAR",
                    "cordon",
                    2,
                    58,
                    1,
                    26,
                    2,
                    0.75,
                    1.5,
                    "posts and three wires",
                    "kitchen garden",
                    "cordon at 45 degrees",
                    "parents and other kinds"),
            new BlockPlan("SB", "bed", 26, 58, 2, 10, 1.2, 0.3, 1, "none", "kitchen garden", "stool", "stool bed"),
            new BlockPlan("NUR", "bed", 31, 57, 4, 50, 0.6, 0.3, 1, "canes", "potatoes", "maiden", "nursery bed"),
            new BlockPlan("A", "row", 2, 37, 6, 25, 3, 1, 3, "stakes", "pasture", "free", "seedlings on own roots"),
            new BlockPlan("B", "row", 2, 17, 6, 30, 3, 1, 3, "stakes", "pasture", "spindle", "seedlings on M.9"),
            new BlockPlan(
                    "C",
                    "cordon",
                    2,
                    2,
                    7,
                    58,
                    2,
                    0.75,
                    2,
                    "posts and two wires",
                    "pasture, then clover",
                    "upright cordon",
                    "seedlings on dwarf stock"),
            new BlockPlan(
                    "T1",
                    "row",
                    34,
                    38,
                    4,
                    6,
                    3,
                    1.5,
                    3,
                    "stakes and wire",
                    "pasture",
                    "spindle",
                    "second stage, first trial"),
            new BlockPlan(
                    "T2",
                    "row",
                    34,
                    20,
                    3,
                    8,
                    3,
                    1.5,
                    3,
                    "stakes and wire",
                    "pasture",
                    "spindle",
                    "second stage, second trial"));

    private final Map<String, BlockPlan> blocks = new LinkedHashMap<>();
    private final Map<Place, Tree> standing = new HashMap<>();
    private final Map<Place, String> history = new HashMap<>();
    private final Map<String, Integer> next = new HashMap<>();

    Ground() {
        BLOCKS.forEach(block -> blocks.put(block.code(), block));
    }

    BlockPlan block(String code) {
        return blocks.get(code);
    }

    Place place(String block, int row, int number) {
        return new Place(blocks.get(block), row, number);
    }

    void enter(Book book, String... codes) {
        for (String code : codes) {
            BlockPlan block = blocks.get(code);
            book.add(blockRow(book, block));
            for (int row = 1; row <= block.rows(); row++) {
                book.add(rowRow(book, block, row));
            }
        }
    }

    private static Row blockRow(Book book, BlockPlan block) {
        return book.row(Table.BLOCKS)
                .with("block", block.code())
                .with("x_m", block.x())
                .with("y_m", block.y())
                .with("rows", block.rows())
                .with("places_per_row", block.places())
                .with("row_spacing_m", block.rowSpacing())
                .with("place_spacing_m", block.spacing())
                .with("bearing_deg", 90)
                .with("headland_m", block.headland())
                .with("support", block.support())
                .with("previous_crop", block.previousCrop())
                .with("note", block.note());
    }

    private static Row rowRow(Book book, BlockPlan block, int row) {
        return book.row(Table.ROWS)
                .with("block", block.code())
                .with("row", row)
                .with("kind", block.kind())
                .with("places", block.places())
                .with("spacing_m", block.spacing())
                .with("counted_from", "gate end")
                .with("guards_count", "no")
                .with("training", block.training());
    }

    /** The next place of the block in walking order where nothing has stood yet; a used one rests. */
    Optional<Place> free(String code) {
        BlockPlan block = blocks.get(code);
        for (int at = next.getOrDefault(code, 0); at < block.rows() * block.places(); at++) {
            Place place = new Place(block, at / block.places() + 1, at % block.places() + 1);
            if (!history.containsKey(place)) {
                next.put(code, at);
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }

    /** Keeps a place for a tree that comes later, such as a check. */
    void reserve(Place place, String why) {
        history.put(place, why);
    }

    void plant(Book book, Tree tree, Place place, String from) {
        Tree there = standing.put(place, tree);
        if (there != null) {
            throw new IllegalStateException(place + " is taken by " + there.tag());
        }
        history.put(place, tree.tag());
        tree.stand(place, from);
        book.add(row(book, tree, place));
    }

    private static Row row(Book book, Tree tree, Place place) {
        return book.row(Table.PLACES)
                .with("plant", tree.tag())
                .with("block", place.block().code())
                .with("row", place.row())
                .with("place", place.number())
                .with("from", tree.placedFrom());
    }

    /** The tree leaves its place, if it has one. */
    void clear(Book book, Tree tree, String to) {
        tree.place().ifPresent(place -> {
            standing.remove(place);
            book.change(Table.PLACES, row(book, tree, place).key(), "to", to);
            tree.leave();
        });
    }

    long count(Predicate<Tree> which) {
        return standing.values().stream().filter(which).count();
    }
}
