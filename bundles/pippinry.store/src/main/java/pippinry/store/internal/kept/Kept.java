package pippinry.store.internal.kept;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import pippinry.model.PagedTable;
import pippinry.model.Program;
import pippinry.model.page.Page;
import pippinry.model.page.Words;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/**
 * A program as it was read from a store folder.
 *
 * @param sum of the ledger at its last edit, as it was when the store was written
 */
public record Kept(Program program, int sum) {

    /** Reads all of it into memory. @throws NotWhole if anything is amiss */
    static Kept read(KeptRoot root) {
        if (root.format != KeptRoot.FORMAT) {
            throw new NotWhole("it has format " + root.format + " and not " + KeptRoot.FORMAT);
        }
        if (!root.isWhole()) {
            throw new NotWhole("its sum is wrong");
        }
        if (!Arrays.equals(root.shapes, Shapes.all())) {
            throw new NotWhole("its tables have other columns");
        }
        try {
            return new Kept(program(root), root.sum);
        } catch (IllegalArgumentException e) {
            throw new NotWhole(e.getMessage());
        }
    }

    private static Program program(KeptRoot root) {
        Program.Restoring program = Program.restoring();
        for (int place = 0; place < root.shapes.length; place++) {
            fill(program, root, place, Kinds.ALL.get(place));
        }
        Program restored = program.program(root.edit, root.time());
        for (int place = 0; place < root.shapes.length; place++) {
            if (restored.table(Kinds.ALL.get(place)).size() != root.sizes[place]) {
                throw new NotWhole("rows of " + Kinds.ALL.get(place) + " are missing");
            }
        }
        return restored;
    }

    private static <T extends Record> void fill(Program.Restoring program, KeptRoot root, int place, Kind<T> kind) {
        int nextId = root.nextIds[place];
        if (Program.empty().table(kind) instanceof PagedTable) {
            program.table(kind, words(root, place), pages(root, place, kind), nextId);
        } else {
            program.table(kind, new RowBlocks<>(place, kind).readAll(root.trees[place]), nextId);
        }
    }

    private static Words words(KeptRoot root, int place) {
        List<String> texts = new WordBlocks(place).readAll(root.wordTrees[place]);
        if (texts.size() != root.wordCounts[place]) {
            throw new NotWhole("words are missing");
        }
        return Words.of(texts);
    }

    /** By number; null for one without rows. */
    private static List<Page> pages(KeptRoot root, int place, Kind<?> kind) {
        int columns = kind.columns().size();
        List<Page> pages = new ArrayList<>();
        BlockTree.forEach(root.trees[place], (bytes, number) -> {
            pages.addAll(Collections.nCopies(number - pages.size(), null));
            pages.add(Page.of(kind.table(), number, columns, bytes));
        });
        return pages;
    }
}
