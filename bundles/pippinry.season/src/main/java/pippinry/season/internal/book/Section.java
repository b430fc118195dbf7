package pippinry.season.internal.book;

import java.util.List;

/** A chapter as it was written. */
record Section(String title, List<Block> blocks) {

    Section {
        blocks = List.copyOf(blocks);
    }
}
