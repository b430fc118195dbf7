package pippinry.labels.internal.wanted;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Block;
import pippinry.model.record.BlockRow;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.YesNo;
import pippinry.model.value.Code;

/** Tags for row ends: which row, from which end it is counted, who stands first and last. */
final class RowTags implements TagSource {
    @Override
    public WantedTags wanted(Wish wish) {
        List<Tag> tags = new ArrayList<>();
        wish.program().table(Kinds.BLOCKS).stream()
                .filter(block -> wish.block().map(block.block().text()::equals).orElse(true))
                .sorted(Comparator.comparing(block -> block.block().text(), NaturalOrder.BY_NUMBER))
                .forEach(block -> addRows(wish, block, tags));
        return WantedTags.of(tags);
    }

    private static void addRows(Wish wish, Block block, List<Tag> tags) {
        for (String row : rows(wish.program(), block)) {
            String number = block.block().text() + "/" + row;
            boolean wanted = wish.row().map(row::equals).orElse(true);
            if (wish.isOpen() ? wanted : wish.names(number)) {
                tags.add(tag(wish.program(), block, row, number));
            }
        }
    }

    /** Rows that the block says it has, that are described, or in which something stands. */
    private static TreeSet<String> rows(Program program, Block block) {
        TreeSet<String> rows = new TreeSet<>(NaturalOrder.BY_NUMBER);
        for (int row = 1; row <= block.rows().orElse(0); row++) {
            rows.add(String.valueOf(row));
        }
        program.table(Kinds.ROWS)
                .citing(block.block().text())
                .forEach(row -> rows.add(row.value().row()));
        standing(program, block).stream().map(Occupancy::row).forEach(rows::add);
        rows.remove("");
        return rows;
    }

    private static List<Occupancy> standing(Program program, Block block) {
        return program.table(Kinds.PLACES).citing(block.block().text()).stream()
                .map(Row::value)
                .filter(place -> place.to().isEmpty() && place.block().equals(Optional.of(block.block())))
                .sorted(Comparator.comparing(Occupancy::place, NaturalOrder.BY_NUMBER))
                .toList();
    }

    private static Tag tag(Program program, Block block, String row, String number) {
        List<Occupancy> plants = standing(program, block).stream()
                .filter(place -> place.row().equals(row))
                .toList();
        return new Tag(
                number,
                Optional.empty(),
                List.of(counted(program, block.block().text(), row), plants.isEmpty() ? "" : firstAndLast(plants)));
    }

    /** From which end a row is counted, and whether guards are. */
    static String counted(Program program, String block, String row) {
        Optional<BlockRow> own =
                program.table(Kinds.ROWS).find(block + "/" + row).map(Row::value);
        String from = own.map(BlockRow::countedFrom).orElse("");
        String guards = own.flatMap(BlockRow::guardsCount)
                .map(yes -> yes == YesNo.YES ? "guards counted" : "guards not counted")
                .orElse("");
        return Phrases.row(Phrases.joined("row " + row), from.isBlank() ? "" : "counted from " + from, guards);
    }

    private static String firstAndLast(List<Occupancy> plants) {
        Occupancy first = plants.get(0);
        Occupancy last = plants.get(plants.size() - 1);
        return plants.size() == 1
                ? "1 plant: " + spot(first)
                : plants.size() + " plants: " + spot(first) + " to " + spot(last);
    }

    private static String spot(Occupancy place) {
        Code<Plant> plant = place.plant();
        return Phrases.joined("place " + place.place()) + " " + plant;
    }
}
