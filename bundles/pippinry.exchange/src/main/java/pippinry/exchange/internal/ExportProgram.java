package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.ask.TaskSource;

/** Writes a program out. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=export", Subcommand.SUMMARY + "=writes the program out"})
@Command(
        description = "Writes a program out, as plain tables (CSV) if nothing else is said.",
        footer = {
            "",
            "Examples:",
            "  pippinry export larkmoor larkmoor-tables",
            "  pippinry export larkmoor larkmoor.jsonl --archive",
            "  pippinry export larkmoor season.ics --calendar --weeks 26 --replace"
        })
public final class ExportProgram implements Subcommand {

    private static final int MOST_WEEKS = 520;

    @Parameters(index = "0", paramLabel = "DIR", description = "The program folder.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "OUT", description = "Where to write.")
    private Path out;

    @ArgGroup
    private final Form form = new Form();

    /** What to write; one at a time. */
    private static final class Form {

        @Option(names = "--tables", description = "Plain tables into the folder OUT (meant if nothing is said).")
        private boolean tables;

        @Option(
                names = "--archive",
                description = "The whole program with its history into the file OUT, as JSON lines;"
                        + " photos into a folder beside it.")
        private boolean archive;

        @Option(
                names = "--passport",
                description = "Passport data of every genotype that lives here into the file OUT"
                        + " (FAO/Bioversity Multi-crop Passport Descriptors V.2.1).")
        private boolean passport;

        @Option(names = "--calendar", description = "What is due, as an iCalendar into the file OUT.")
        private boolean calendar;
    }

    @Option(names = "--replace", description = "Write over what an earlier export left in OUT.")
    private boolean replace;

    @Option(
            names = "--for-spreadsheet",
            description = "With tables: put an apostrophe before words that a spreadsheet would take for a formula."
                    + " Such tables are for reading: they do not come in again as they were.")
    private boolean forSpreadsheet;

    @Option(names = "--with-site", description = "With passports: tell where the land lies.")
    private boolean withSite;

    @Option(
            names = "--weeks",
            paramLabel = "N",
            defaultValue = "52",
            description = "With a calendar: how many weeks ahead; ${DEFAULT-VALUE} if it is left out.")
    private int weeks;

    private final List<TaskSource> sources;

    @Activate
    public ExportProgram(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<TaskSource> sources) {
        this.sources = sources;
    }

    @Override
    public Answer run(Call call) throws Exception {
        if (weeks < 1 || weeks > MOST_WEEKS) {
            throw new CallRefused("--weeks " + weeks + ": a whole number from 1 to " + MOST_WEEKS + " is expected");
        }
        try (ProgramStore store = call.folders().openToRead(folder, call.clock())) {
            return outgoing().write(call, store, program(call, store), new Destination(out, replace));
        } catch (IOException e) {
            throw new CallRefused(out + " cannot be written: " + e.getMessage());
        }
    }

    private Outgoing outgoing() {
        if (form.archive) {
            return new ArchiveOut();
        }
        if (form.passport) {
            return new PassportOut(withSite);
        }
        return form.calendar ? new CalendarOut(sources, weeks) : new TablesOut(forSpreadsheet);
    }

    /** Inside {@code asof} the call's own program is the one of that day. */
    private Program program(Call call, ProgramStore store) {
        try {
            return Files.isSameFile(call.folder(), folder) ? call.program() : store.now();
        } catch (CallRefused | IOException e) {
            return store.now();
        }
    }
}
