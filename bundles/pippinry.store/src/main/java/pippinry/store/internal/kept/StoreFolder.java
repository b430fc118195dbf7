package pippinry.store.internal.kept;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.store.internal.ledger.SetAside;

/** The folder of the fast copy in a program folder: the engine's files and their seal. One thread at a time. */
public final class StoreFolder implements AutoCloseable {

    /** What a folder may hold that is of no more use, before all is written anew: this and three times what is of use. */
    private static final long WASTE = 16L << 20;

    private final Path path;
    private final SetAside setAside;
    private final long waste;
    private long limit;
    private Seal seal;
    private Optional<Engine> engine = Optional.empty();
    private KeptRoot root = KeptRoot.empty();
    private String amiss = "";

    public StoreFolder(Path program, SetAside setAside) {
        this(program, setAside, WASTE);
    }

    StoreFolder(Path program, SetAside setAside, long waste) {
        this.path = program.resolve("store");
        this.setAside = setAside;
        this.waste = waste;
        this.limit = waste;
        this.seal = newSeal();
    }

    private Seal newSeal() {
        return new Seal(path.resolve("seal.txt"), graph());
    }

    private Path graph() {
        return path.resolve("graph");
    }

    /** What it holds; empty if nothing that can be trusted, and then {@link #amiss} says why. */
    public Optional<Kept> load() {
        try {
            Kept kept = read();
            return Optional.of(kept);
        } catch (NotWhole e) {
            amiss = e.getMessage();
        } catch (IOException | RuntimeException | Error e) {
            // Whatever became of it: the ledger has everything.
            amiss = "it did not open (" + e.getMessage() + ")";
        }
        return Optional.empty();
    }

    private Kept read() throws IOException {
        if (!Files.isDirectory(path)) {
            throw new NotWhole("it was missing");
        }
        seal.restore();
        KeptRoot found = started().root().orElseThrow(() -> new NotWhole("it was empty"));
        Kept kept = Kept.read(found);
        root = found;
        return kept;
    }

    /** Why nothing could be loaded, as the end of a sentence. */
    public String amiss() {
        return amiss;
    }

    /** Moves what is there away and begins an empty one, in which all is to be written; gives where the old one went. */
    public Optional<Path> beginAnew() throws IOException {
        closeEngine();
        Optional<Path> old = Files.exists(path) ? Optional.of(setAside.move(path)) : Optional.empty();
        root = KeptRoot.empty();
        seal = newSeal();
        return old;
    }

    /** @param sum of the ledger at the program's last edit */
    void write(Program program, Touched touched, int sum) throws IOException {
        boolean wasteful = seal.length() > limit && isWasteful();
        if (wasteful) {
            remove();
        }
        writeRoot(program, wasteful ? Touched.all(program) : touched, sum);
    }

    /** Weighs all blocks, so it is asked only when the files have grown by as much again. */
    private boolean isWasteful() {
        limit = waste + 4 * root.length();
        return seal.length() > limit;
    }

    private void writeRoot(Program program, Touched touched, int sum) throws IOException {
        new RootWriting(root, program).write(touched, sum);
        started().store(root);
        seal.renew();
    }

    /** Nothing is lost if the process ends in between: the ledger has everything. */
    private void remove() throws IOException {
        closeEngine();
        Folders.remove(path);
        root = KeptRoot.empty();
        seal = newSeal();
    }

    private Engine started() throws IOException {
        if (engine.isEmpty()) {
            Files.createDirectories(graph());
            engine = Optional.of(Engine.start(graph()));
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
