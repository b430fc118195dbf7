package pippinry.store.internal.kept;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import pippinry.model.PagedTable;
import pippinry.model.Program;
import pippinry.model.Table;
import pippinry.model.page.Page;
import pippinry.model.page.Words;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.store.internal.ledger.SetAside;

/** The folder of Eclipse Store in a program folder. One thread at a time. */
public final class StoreFolder implements AutoCloseable {

    private final Path path;
    private final SetAside setAside;
    private Optional<Engine> engine = Optional.empty();
    private KeptRoot root = KeptRoot.empty();
    private String amiss = "";

    public StoreFolder(Path program, SetAside setAside) {
        this.path = program.resolve("store");
        this.setAside = setAside;
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
        root = KeptRoot.empty();
        return Files.exists(path) ? Optional.of(setAside.move(path)) : Optional.empty();
    }

    /**
     * Writes the program.
     *
     * @param sum of the ledger at its last edit
     * @param touched for each table the blocks that may differ from what was written last
     */
    void write(Program program, int sum, List<BitSet> touched) {
        root.renewArrays();
        for (int place = 0; place < touched.size(); place++) {
            if (!touched.get(place).isEmpty()) {
                writeTable(program, place, Kinds.ALL.get(place), touched.get(place));
            }
        }
        root.edit = program.edit();
        root.sum = sum;
        root.seconds = program.time().getEpochSecond();
        root.nanos = program.time().getNano();
        root.seal();
        started().store(root);
    }

    private <T extends Record> void writeTable(Program program, int place, Kind<T> kind, BitSet blocks) {
        Table<T> table = program.table(kind);
        BlockSource source = table instanceof PagedTable<T> paged
                ? number -> paged.page(number).map(Page::bytes).orElse(null)
                : number -> new RowBlocks<>(place, kind).write(table, number);
        root.trees[place] = BlockTree.with(root.trees[place], blocks, source);
        root.nextIds[place] = table.nextId();
        root.sizes[place] = table.size();
        if (table instanceof PagedTable<T> paged) {
            writeWords(paged.words(), place);
        }
    }

    /** Words are only ever added, so the last block that is there grows and others follow. */
    private void writeWords(Words words, int place) {
        BitSet blocks = new BitSet();
        blocks.set(WordBlocks.blockOf(root.wordCounts[place]), WordBlocks.blockOf(words.size() + WordBlocks.WORDS - 1));
        WordBlocks writer = new WordBlocks(place);
        root.wordTrees[place] = BlockTree.with(root.wordTrees[place], blocks, number -> writer.write(words, number));
        root.wordCounts[place] = words.size();
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
