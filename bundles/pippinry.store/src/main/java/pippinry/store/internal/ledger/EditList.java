package pippinry.store.internal.ledger;

import java.util.List;

/** Edits that no more are added to. */
record EditList(LedgerFolder folder, List<Entry> all) implements Edits {

    @Override
    public long last() {
        return all.size();
    }

    @Override
    public Entry edit(long number) {
        return all.get(Math.toIntExact(number - 1));
    }

    @Override
    public List<Entry> edits(long from, long to) {
        return from > to ? List.of() : all.subList((int) from - 1, (int) to);
    }
}
