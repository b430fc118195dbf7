package pippinry.season.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.StoreFailed;
import pippinry.model.ask.TaskSource;
import pippinry.model.record.Kinds;
import pippinry.model.record.Outcome;
import pippinry.season.internal.book.Book;
import pippinry.season.internal.book.PdfBook;
import pippinry.season.internal.due.DueList;
import pippinry.season.internal.due.Entry;
import pippinry.season.internal.due.Listing;
import pippinry.season.internal.due.Marking;
import pippinry.season.internal.due.Words;
import pippinry.season.internal.walk.DaySheet;
import pippinry.season.internal.walk.Walk;
import pippinry.season.internal.walk.WalkListing;

/** Tells what is due, and takes note of what was done. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=season", Subcommand.SUMMARY + "=what is due in the next weeks, by batch"})
@Command(
        description = "Lists what is due, oldest first and by batch: what the records call for and tasks of your own.",
        footer = {
            "",
            "Examples:",
            "  pippinry season --program larkmoor --weeks 6",
            "  pippinry season --program larkmoor --done sow:L25-018",
            "  pippinry season --program larkmoor --block C --row 7 --sheet row-7.pdf"
        })
public final class SeasonCommand implements Subcommand {

    private static final int MOST_WEEKS = 520;

    @Option(
            names = "--weeks",
            paramLabel = "N",
            defaultValue = "4",
            description = "How many weeks ahead; ${DEFAULT-VALUE} if it is left out.")
    private int weeks;

    @Option(
            names = "--done",
            paramLabel = "RULE:BATCH",
            description = "Marks this task as done; RULE:BATCH@DUE where several are due.")
    private List<String> done = List.of();

    @Option(names = "--skip", paramLabel = "RULE:BATCH", description = "Marks this task as skipped.")
    private List<String> skipped = List.of();

    @Option(names = "--block", paramLabel = "BLOCK", description = "Only what is to be done in this block today.")
    private Optional<String> block = Optional.empty();

    @Option(names = "--row", paramLabel = "ROW", description = "Only in this row of the block.")
    private Optional<String> row = Optional.empty();

    @Option(
            names = "--sheet",
            paramLabel = "FILE.pdf",
            description = "Also print the day's work in walking order, to carry out and tick off.")
    private Optional<Path> sheet = Optional.empty();

    private final List<TaskSource> sources;

    @Activate
    public SeasonCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<TaskSource> sources) {
        this.sources = sources;
    }

    @Override
    public Answer run(Call call) throws Exception {
        if (row.isPresent() && block.isEmpty()) {
            throw new CallRefused("--row " + row.get() + ": name its block too, with --block");
        }
        if (weeks < 0 || weeks > MOST_WEEKS) {
            throw new CallRefused("--weeks " + weeks + ": a whole number from 0 to " + MOST_WEEKS + " is expected");
        }
        mark(call, done, Outcome.DONE);
        mark(call, skipped, Outcome.SKIPPED);
        Program program = call.program();
        DueList list = list(call, program);
        Walk walk = Walk.of(program, DaySheet.ofDay(list));
        if (block.isPresent()) {
            walk = walk.in(requireBlock(program, block.get()), row);
        }
        if (sheet.isPresent()) {
            print(program, list, walk, sheet.get());
        }
        return block.isPresent()
                ? Answer.of(WalkListing.json(list, walk), WalkListing.words(list, walk))
                : Answer.of(Listing.json(list), Listing.words(list));
    }

    private String requireBlock(Program program, String name) throws CallRefused {
        if (program.table(Kinds.BLOCKS).find(name).isEmpty()) {
            throw new CallRefused("--block " + name + ": there is no such block; there are: "
                    + program.table(Kinds.BLOCKS).stream()
                            .map(known -> known.block().text())
                            .collect(Collectors.joining(", ")));
        }
        return name;
    }

    private static void print(Program program, DueList list, Walk walk, Path file) {
        Book book = Book.sheet(
                program.setting("name").orElse("Program"),
                Words.date(list.today()),
                "Day sheet",
                page -> DaySheet.write(walk, list, page));
        try {
            WholeFile.write(file, stream -> PdfBook.writeSheet(book, stream));
        } catch (IOException e) {
            throw new StoreFailed("The day sheet could not be written to " + file + ": " + e, e);
        }
    }

    private DueList list(Call call, Program program) {
        LocalDate today = call.today();
        return DueList.of(program, sources, today, today.plusWeeks(weeks));
    }

    private void mark(Call call, List<String> wanted, Outcome outcome) throws Exception {
        for (String some : wanted) {
            ProgramStore store = call.store();
            try {
                Entry entry = Marking.find(list(call, store.now()), some);
                store.apply(Marking.edit(store.now(), entry, outcome, call.today(), call.author()));
            } catch (IllegalArgumentException e) {
                throw new CallRefused(e.getMessage());
            }
        }
    }
}
