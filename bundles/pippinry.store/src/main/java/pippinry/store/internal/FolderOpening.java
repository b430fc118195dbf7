package pippinry.store.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.StoreFailed;
import pippinry.store.internal.kept.Keeping;
import pippinry.store.internal.kept.Kept;
import pippinry.store.internal.kept.StoreCopy;
import pippinry.store.internal.kept.StoreFolder;
import pippinry.store.internal.kept.Touched;
import pippinry.store.internal.ledger.Backup;
import pippinry.store.internal.ledger.Disk;
import pippinry.store.internal.ledger.Edits;
import pippinry.store.internal.ledger.Ledger;
import pippinry.store.internal.ledger.LedgerFolder;
import pippinry.store.internal.ledger.LedgerOpening;
import pippinry.store.internal.ledger.NewerFormat;
import pippinry.store.internal.ledger.SetAside;
import pippinry.store.internal.ledger.Trouble;

/** Opens one program folder. */
final class FolderOpening {

    private static final long LONG_LEDGER = 12L << 20;

    private final Path folder;
    private final Clock clock;
    private final Disk disk;
    private final Announcement announcement;
    private final List<String> notices = new ArrayList<>();

    FolderOpening(Path folder, Clock clock, Disk disk, Announcement announcement) {
        this.folder = folder.toAbsolutePath().normalize();
        this.clock = clock;
        this.disk = disk;
        this.announcement = announcement;
    }

    ProgramStore create() {
        try {
            refuseIfFilled();
            Files.createDirectories(folder);
            return locked(this::begin);
        } catch (IOException e) {
            // A folder that is left with half a program in it could not be used for the next try.
            removeBegun();
            throw Trouble.with("The program was not made", folder, e);
        }
    }

    private void removeBegun() {
        for (String name : List.of("ledger/000001.jsonl", "ledger", "about.txt", "lock")) {
            try {
                Files.deleteIfExists(folder.resolve(name));
            } catch (IOException e) {
                // It stays, and the person is told anyway that no program was made.
            }
        }
    }

    private void refuseIfFilled() throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            if (files.findAny().isPresent()) {
                throw new StoreFailed("A new program needs a folder that is empty or not there yet, and " + folder
                        + " is not empty. Choose another.");
            }
        }
    }

    private LedgerStore begin(FolderLock lock) throws IOException {
        Files.writeString(folder.resolve("about.txt"), About.TEXT);
        Ledger ledger = new LedgerOpening(folder, disk, clock).create();
        return with(ledger, () -> store(lock, ledger, Program.empty(), new StoreFolder(folder, setAside())));
    }

    ProgramStore open() {
        refuseIfNone();
        try {
            NewerFormat.check(LedgerFolder.of(folder));
            return locked(this::open);
        } catch (IOException e) {
            throw Trouble.with("The program could not be opened", folder, e);
        }
    }

    ProgramStore openToRead() {
        refuseIfNone();
        try {
            LedgerOpening opening = new LedgerOpening(folder, disk, clock);
            CompletableFuture<Optional<Kept>> loading = CompletableFuture.supplyAsync(this::loadToRead);
            Edits edits = opening.read();
            Program from = loading.join()
                    .filter(kept -> agrees(kept, edits))
                    .map(Kept::program)
                    .orElseGet(Program::empty);
            return new ReadStore(folder, clock, edits, from, opening.notices());
        } catch (IOException e) {
            throw Trouble.with("The program could not be opened", folder, e);
        }
    }

    /** Up to some length the ledger alone is read sooner than the engine starts. */
    private Optional<Kept> loadToRead() {
        boolean isLong = LedgerFolder.of(folder).length() > LONG_LEDGER;
        return isLong ? new StoreCopy(folder).load() : Optional.empty();
    }

    private void refuseIfNone() {
        if (!LedgerFolder.isIn(folder)) {
            throw new StoreFailed("There is no program in " + folder
                    + ". Name the folder that holds 'ledger', or make a" + " new program.");
        }
    }

    private interface Opening {
        LedgerStore open() throws IOException;
    }

    private interface LockedOpening {
        LedgerStore open(FolderLock lock) throws IOException;
    }

    private LedgerStore locked(LockedOpening opening) throws IOException {
        FolderLock lock = FolderLock.take(folder, LockHolder.thisProcess(clock.instant()));
        return with(lock, () -> opening.open(lock));
    }

    /** What is open stays so with the store, and is closed if that does not come about. */
    private static <C extends AutoCloseable> LedgerStore with(C open, Opening opening) throws IOException {
        try {
            return opening.open();
        } catch (IOException | RuntimeException | Error e) {
            try {
                open.close();
            } catch (Exception again) {
                e.addSuppressed(again);
            }
            throw e;
        }
    }

    /** The store folder is read while the ledger is checked. */
    private LedgerStore open(FolderLock lock) throws IOException {
        StoreFolder store = new StoreFolder(folder, setAside());
        CompletableFuture<Optional<Kept>> loading = CompletableFuture.supplyAsync(store::load);
        try {
            LedgerOpening opening = new LedgerOpening(folder, disk, clock);
            Ledger ledger = opening.open();
            notices.addAll(opening.notices());
            return with(ledger, () -> open(lock, ledger, store, loading.join()));
        } catch (IOException | RuntimeException | Error e) {
            loading.join();
            store.close();
            throw e;
        }
    }

    private LedgerStore open(FolderLock lock, Ledger ledger, StoreFolder store, Optional<Kept> kept)
            throws IOException {
        if (kept.isPresent() && agrees(kept.get(), ledger)) {
            return store(lock, ledger, kept.get().program(), store);
        }
        String why = kept.map(found -> disagreement(found, ledger)).orElse(store.amiss());
        return rebuilt(lock, ledger, store, why);
    }

    private static boolean agrees(Kept kept, Edits ledger) {
        long edit = kept.program().edit();
        return edit <= ledger.last() && (edit == 0 || ledger.edit(edit).sum() == kept.sum());
    }

    private static String disagreement(Kept kept, Ledger ledger) {
        long edit = kept.program().edit();
        return edit > ledger.last()
                ? "it knew edits up to " + edit + ", and the ledger and its backup end with " + ledger.last()
                : "it did not agree with the ledger";
    }

    private LedgerStore rebuilt(FolderLock lock, Ledger ledger, StoreFolder store, String why) throws IOException {
        Optional<Path> old = store.beginAnew();
        if (ledger.last() > 0) {
            notices.add("The fast copy of the program was made again from the ledger, because " + why
                    + "."
                    + old.map(path -> " The old one is kept as " + path + ".").orElse(""));
        }
        return store(lock, ledger, Program.empty(), store);
    }

    private LedgerStore store(FolderLock lock, Ledger ledger, Program from, StoreFolder store) {
        Touched behind = new Touched();
        Program now = new Replay(ledger, from, changes -> behind.add(from, changes)).to(ledger.last());
        Keeping keeping = new Keeping(store, "pippinry-store " + folder.getFileName());
        if (now.edit() > from.edit()) {
            keeping.owe(now, ledger.edit(now.edit()).sum(), behind);
        }
        keeping.start();
        Background background = new Background(keeping, new Backup(folder, disk, setAside()), notices);
        background.backUp(ledger.end());
        return new LedgerStore(folder, clock, ledger, now, background, announcement, lock);
    }

    private SetAside setAside() {
        return new SetAside(folder, clock);
    }
}
