package pippinry.commandline;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.Program;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;

/** What one call of a subcommand may use. A command that asks for no program opens none. */
@ProviderType
public interface Call {

    /** The program named by {@code --program}, to read; by {@code asof} as it stood that day. */
    Program program() throws CallRefused;

    /** The program named by {@code --program}, to change. */
    ProgramStore store() throws CallRefused;

    /** The folder named by {@code --program}. */
    Path folder() throws CallRefused;

    /** For commands that make or load a program of their own. */
    ProgramFolders folders();

    /** The day of {@code --on}, else the program's own today (the demo has one), else the clock's. */
    LocalDate today();

    Clock clock();

    /** Initials of the hand that edits, from {@code --author} or the setting of the computer. */
    String author();

    /** The image the program runs from: demo data lie beside it. */
    Path image();

    /** Where a person types answers; only commands that ask use it. */
    InputStream in();

    /** Words while the work goes on; silent with {@code --json}. */
    PrintStream out();

    /**
     * Says on standard error how far long work is, when that is a terminal.
     *
     * @param done share of the work, from 0 to 1
     */
    void progress(String what, double done);

    /** Runs another subcommand of this program with these arguments, as {@code demo} and {@code asof} do. */
    Answer run(List<String> arguments) throws Exception;
}
