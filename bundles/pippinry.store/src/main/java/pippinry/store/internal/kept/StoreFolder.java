package pippinry.store.internal.kept;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.store.internal.ledger.SetAside;

/** The folder of Eclipse Store in a program folder. One thread at a time. */
public final class StoreFolder implements AutoCloseable {

    private final Path path;
    private final SetAside setAside;
    private Optional<Engine> engine = Optional.empty();
    private KeptRoot root = emptyRoot();
    private String amiss = "";

    public StoreFolder(Path program, SetAside setAside) {
        this.path = program.resolve("store");
        this.setAside = setAside;
    }

    private static KeptRoot emptyRoot() {
        KeptRoot root = new KeptRoot();
        int tables = Kinds.ALL.size();
        root.shapes = Shapes.all();
        root.nextIds = new int[tables];
        root.sizes = new int[tables];
        root.trees = new Object[tables][];
        for (int table = 0; table < tables; table++) {
            root.trees[table] = BlockTree.empty();
        }
        return root;
    }

    /** What it holds; empty if nothing that can be trusted, and then {@link #amiss} says why. */
    public Optional<Kept> load() {
        if (!Files.isDirectory(path)) {
            amiss = "it was missing";
            return Optional.empty();
        }
        try {
            Engine started = Engine.start(path);
            engine = Optional.of(started);
            KeptRoot found = started.root().orElseThrow(() -> new NotWhole("it was empty"));
            Kept kept = Kept.read(found);
            root = found;
            return Optional.of(kept);
        } catch (RuntimeException | Error e) {
            // Whatever a damaged file made of it: the ledger has everything.
            amiss = e instanceof NotWhole ? e.getMessage() : "it did not open (" + e + ")";
            return Optional.empty();
        }
    }

    /** Why nothing could be loaded, as the end of a sentence. */
    public String amiss() {
        return amiss;
    }

    /** Moves what is there away and begins an empty one, in which all is to be written; gives where the old one went. */
    public Optional<Path> beginAnew() throws IOException {
        closeEngine();
        root = emptyRoot();
        return Files.exists(path) ? Optional.of(setAside.move(path)) : Optional.empty();
    }

    /**
     * Writes the program.
     *
     * @param sum of the ledger at its last edit
     * @param touched for each table the blocks that may differ from what was written last
     */
    void write(Program program, int sum, List<BitSet> touched) {
        // What is stored once is not looked into again: whatever changes must be a new object.
        root.trees = root.trees.clone();
        root.nextIds = root.nextIds.clone();
        root.sizes = root.sizes.clone();
        for (int table = 0; table < touched.size(); table++) {
            writeTable(program, table, Kinds.ALL.get(table), touched.get(table));
        }
        root.edit = program.edit();
        root.sum = sum;
        root.seconds = program.time().getEpochSecond();
        root.nanos = program.time().getNano();
        root.seal();
        started().store(root);
    }

    private <T extends Record> void writeTable(Program program, int table, Kind<T> kind, BitSet blocks) {
        RowBlocks<T> writer = new RowBlocks<>(table, kind);
        Object[] tree = root.trees[table];
        for (int block = blocks.nextSetBit(0); block >= 0; block = blocks.nextSetBit(block + 1)) {
            tree = BlockTree.with(tree, block, writer.write(program.table(kind), block));
        }
        root.trees[table] = tree;
        root.nextIds[table] = program.table(kind).nextId();
        root.sizes[table] = program.table(kind).size();
    }

    private Engine started() {
        if (engine.isEmpty()) {
            engine = Optional.of(Engine.start(path));
        }
        return engine.get();
    }

    private void closeEngine() {
        Optional<Engine> open = engine;
        engine = Optional.empty();
        open.ifPresent(Engine::close);
    }

    @Override
    public void close() {
        closeEngine();
    }
}
