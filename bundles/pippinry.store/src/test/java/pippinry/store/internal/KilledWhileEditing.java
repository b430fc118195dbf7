package pippinry.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.Settled;
import pippinry.model.record.Setting;
import pippinry.store.internal.ledger.Disk;
import pippinry.store.internal.ledger.LedgerOpening;

/**
 * Kills a process that edits, at any moment, opens the program and looks: every edit that was confirmed is there, none by
 * half, and the program is what the ledger says. {@code DIR ROUNDS} kills that many.
 */
public final class KilledWhileEditing {

    private static final int START_MILLIS = 1_500;
    private static final int EDITING_MILLIS = 400;

    private final Path folder;
    private final Random random;
    private long edits;
    private int unconfirmed;
    private int torn;
    private int rebuilt;
    private int killedBeforeOpen;

    KilledWhileEditing(Path folder, long seed) {
        this.folder = folder;
        this.random = new Random(seed);
    }

    public static void main(String[] args) throws Exception {
        KilledWhileEditing kills = new KilledWhileEditing(Path.of(args[0]), System.nanoTime());
        int rounds = Integer.parseInt(args[1]);
        for (int round = 1; round <= rounds; round++) {
            kills.round();
            if (round % 20 == 0 || round == rounds) {
                System.out.println(round + " kills, " + kills.found());
            }
        }
    }

    String found() {
        return edits + " edits; " + killedBeforeOpen + " killed before the program was open, " + torn
                + " with a torn line, " + unconfirmed + " with a last edit that was on disk and not yet confirmed, "
                + rebuilt
                + " with the fast copy made again; no confirmed edit lost, none there by half";
    }

    void round() throws Exception {
        check(killed());
    }

    /** What the process said last; {@code open} if it was open and had confirmed none; empty if it was not even open. */
    private String killed() throws IOException, InterruptedException {
        Process process = start();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            String said = "";
            if (random.nextInt(4) == 0) {
                process.waitFor(random.nextInt(START_MILLIS), TimeUnit.MILLISECONDS);
            } else {
                said = out.readLine();
                process.waitFor(random.nextInt(EDITING_MILLIS), TimeUnit.MILLISECONDS);
            }
            // The handle kills only; the process itself would also close what was said and not yet read.
            process.toHandle().destroyForcibly();
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                said = line;
            }
            process.waitFor();
            return said == null ? "" : said;
        }
    }

    private Process start() throws IOException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        return new ProcessBuilder(
                        java.toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Dslf4j.internal.verbosity=ERROR",
                        "-cp",
                        System.getProperty("java.class.path"),
                        EditsWithoutEnd.class.getName(),
                        folder.toString(),
                        Long.toString(random.nextLong()))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private void check(String said) throws Exception {
        if (!new ProgramFoldersOnDisk().isProgram(folder)) {
            assertEquals("", said);
            killedBeforeOpen++;
            return;
        }
        try (ProgramStore store =
                new FolderOpening(folder, Clock.systemUTC(), new Disk(), (edit, changes) -> {}).open()) {
            checkConfirmed(said, store);
            checkWhole(store);
            count(store);
            Program again = new Replay(new LedgerOpening(folder, new Disk(), Clock.systemUTC()).read(), Program.empty())
                    .to(store.now().edit());
            Programs.assertAlike(again, store.now());
        }
    }

    private void checkConfirmed(String said, ProgramStore store) {
        if (said.isEmpty() || said.equals(EditsWithoutEnd.OPEN)) {
            killedBeforeOpen += said.isEmpty() ? 1 : 0;
            return;
        }
        long confirmed = Long.parseLong(said.substring(0, said.indexOf(' ')));
        long last = store.now().edit();
        assertTrue(last == confirmed || last == confirmed + 1, last + " on file, " + confirmed + " confirmed");
        unconfirmed += last > confirmed ? 1 : 0;
        if (last == confirmed) {
            assertEquals(said, last + " " + EditsWithoutEnd.size(store));
        }
    }

    /** Of each edit of this round all records are there, and the setting that says which it is. */
    private void checkWhole(ProgramStore store) {
        List<HistoryLine> history = store.history();
        for (HistoryLine line : history.subList((int) edits, history.size())) {
            List<Settled<?>> changes = store.changesOf(line.number());
            assertEquals(line.records(), changes.size());
            if (line.takesBack().isEmpty()) {
                Setting last = (Setting) changes.get(0).after().orElseThrow();
                assertEquals(Long.toString(line.number()), last.value());
            }
        }
        edits = history.size();
    }

    private void count(ProgramStore store) {
        torn += (int) store.notices().stream()
                .filter(notice -> notice.contains("was not finished"))
                .count();
        rebuilt += (int) store.notices().stream()
                .filter(notice -> notice.contains("made again"))
                .count();
    }
}
