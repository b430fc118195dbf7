package pippinry.demo;

import java.util.List;
import java.util.Locale;

/** Writes each sitting into a folder of its own, numbered in the order in which they are to be applied. */
final class ProgramFolder {

    private final CsvFolder folder;

    ProgramFolder(CsvFolder folder) {
        this.folder = folder;
    }

    void write(List<Edit> edits) {
        folder.clear();
        folder.text("program.properties", properties());
        int number = 0;
        for (Edit edit : edits) {
            number++;
            write(
                    edit,
                    folder.child("%03d-%s-%s"
                            .formatted(number, edit.date(), edit.slug().toLowerCase(Locale.ROOT))));
        }
    }

    private static String properties() {
        return String.join(
                "\n", "name=Larkmoor", "crop=apple", "today=" + Larkmoor.TODAY, "latitude=52.9", "altitude_m=240", "");
    }

    private static void write(Edit edit, CsvFolder to) {
        to.text("reason.txt", edit.author() + ": " + edit.reason() + "\n");
        edit.rows()
                .forEach((table, rows) -> to.table(
                        table.fileName(),
                        table.columns(),
                        rows.stream().map(Row::line).toList()));
    }
}
