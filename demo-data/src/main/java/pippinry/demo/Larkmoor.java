package pippinry.demo;

import java.nio.file.Path;
import java.time.LocalDate;

/** Plays fifteen years at Larkmoor, from the first cross in 2011 to a day in March 2026, and writes them down. */
public final class Larkmoor {

    static final LocalDate TODAY = LocalDate.of(2026, 3, 27);

    private final Holding holding = new Holding();
    private final Book book = holding.book();
    private final Sight sight = new Sight(holding);
    private final Mistakes mistakes = new Mistakes();
    private final Years years = new Years(holding, sight, mistakes);

    /**
     * Writes the tables below the folder given: {@code larkmoor} for the program, {@code truth} for what is true of it.
     *
     * @param arguments the folder
     */
    public static void main(String[] arguments) {
        if (arguments.length != 1) {
            System.err.println("one folder to write into, such as demo-data");
            System.exit(2);
        }
        new Larkmoor().write(Path.of(arguments[0]));
    }

    /** Plays all years and writes program and truth. */
    void write(Path folder) {
        play();
        new ProgramFolder(new CsvFolder(folder.resolve("larkmoor"))).write(book.edits());
        new Truth(holding, sight, mistakes).write(new CsvFolder(folder.resolve("truth")));
    }

    private void play() {
        book.openNotebook(
                LocalDate.of(2019, 1, 6),
                "IN",
                "goals-ground-and-old-trees",
                "What the program is for, and what stood here before the first cross");
        years.before();
        book.openNotebook(
                LocalDate.of(2019, 1, 20),
                "IN",
                "notebooks-2011-to-2014",
                "Typed in from the notebooks of 2011 to 2014");
        years.play(2011, 2014);
        book.openNotebook(
                LocalDate.of(2019, 2, 3),
                "OD",
                "notebooks-2015-to-2018",
                "Typed in from the notebooks of 2015 to 2018");
        years.play(2015, 2018);
        book.closeNotebooks();
        years.play(2019, 2025);
        years.lastSpring();
    }
}
