package pippinry.store.internal;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Random;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.HistoryLine;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kinds;
import pippinry.model.record.Setting;
import pippinry.model.value.Code;
import pippinry.store.internal.ledger.Disk;

/**
 * The process that is killed: {@code DIR SEED}. It edits the program without end and says after each edit its number, and
 * how many genotypes and scores there are then.
 */
public final class EditsWithoutEnd {

    static final String OPEN = "open";
    static final Code<Setting> LAST = Code.of("last");

    private static final int LARGE = 2_300;

    private EditsWithoutEnd() {}

    public static void main(String[] args) throws EditRefused {
        Random random = new Random(Long.parseLong(args[1]));
        FolderOpening opening =
                new FolderOpening(Path.of(args[0]), Clock.systemUTC(), new Disk(), (edit, changes) -> {});
        ProgramStore store = new ProgramFoldersOnDisk().isProgram(Path.of(args[0])) ? opening.open() : opening.create();
        System.out.println(OPEN);
        while (true) {
            boolean undo = random.nextInt(6) == 0 && store.undoable().isPresent();
            HistoryLine line = undo ? store.undo("IN") : store.apply(edit(store, random));
            System.out.println(line.number() + " " + size(store));
            System.out.flush();
        }
    }

    static String size(ProgramStore store) {
        return store.now().table(Kinds.GENOTYPES).size() + " "
                + store.now().table(Kinds.SCORES).size();
    }

    /** Now and then one that takes several lines of the ledger. */
    private static Edit edit(ProgramStore store, Random random) {
        String number = Long.toString(store.now().edit() + 1);
        String code = "G_" + random.nextInt(300);
        Edit.Draft draft = Edit.by("IN", "edit " + number)
                .put(Kinds.SETTINGS, new Setting(LAST, number))
                .put(Kinds.GENOTYPES, Rows.genotype(code, "edit " + number));
        int scores = random.nextInt(12) == 0 ? LARGE : random.nextInt(30);
        for (int i = 0; i < scores; i++) {
            draft.put(Kinds.SCORES, Rows.score(code, "brix", Integer.toString(i)));
        }
        return draft.done();
    }
}
