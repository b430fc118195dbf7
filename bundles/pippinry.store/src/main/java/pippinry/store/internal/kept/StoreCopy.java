package pippinry.store.internal.kept;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads the fast copy of a program without touching it: the engine, which writes wherever it is started, gets a copy of the
 * sealed files in a temporary folder. So a program can be read at once while another process has it open.
 */
public final class StoreCopy {

    private final Seal seal;

    public StoreCopy(Path program) {
        Path store = program.resolve("store");
        this.seal = new Seal(store.resolve("seal.txt"), store.resolve("graph"));
    }

    /** Empty if there is no copy that can be trusted, whatever the reason: the ledger has everything. */
    public Optional<Kept> load() {
        try {
            Path here = Files.createTempDirectory("pippinry-read");
            try {
                return Optional.of(load(here));
            } finally {
                Folders.remove(here);
            }
        } catch (IOException | RuntimeException | Error e) {
            return Optional.empty();
        }
    }

    private Kept load(Path here) throws IOException {
        seal.copyTo(here);
        try (Engine engine = Engine.start(here)) {
            return Kept.read(engine.root().orElseThrow(() -> new NotWhole("it was empty")));
        }
    }
}
