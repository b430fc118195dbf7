package pippinry.labels.internal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.labels.internal.entry.Box;
import pippinry.labels.internal.entry.Filing;
import pippinry.labels.internal.entry.NotTaken;
import pippinry.labels.internal.entry.PaperRows;
import pippinry.labels.internal.entry.SheetPhoto;
import pippinry.labels.internal.entry.Sitting;
import pippinry.labels.internal.entry.Sitting.Did;
import pippinry.labels.internal.entry.Sitting.Reply;
import pippinry.labels.internal.wanted.SheetOnFile;
import pippinry.model.record.Sheet;
import pippinry.model.value.ScoreValue;
import pippinry.traits.CropPack;

/** Types in a printed sheet row by row in its own order. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=enter",
            Subcommand.SUMMARY + "=types in a printed sheet row by row in its own order"
        })
@Command(
        description = {
            "Asks for the rows of a sheet as they stand on the paper; each row is on file before the next is asked for.",
            "An empty line leaves the row blank: not entered. ns is not seen. Several columns are parted by blanks, - is a"
                    + " blank box. A number of the sheet before the value goes to its row. An unusual value is typed twice."
                    + " back takes back what was entered last; a point ends.",
            "Lines from a file or pipe are read the same way; there the first that cannot be taken ends the work.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  pippinry enter S-0012 --program larkmoor --on 2026-06-20",
            "  pippinry enter S-0012 --program larkmoor --from 31 --json < notes.txt"
        })
public final class EnterCommand implements Subcommand {

    @Parameters(index = "0", paramLabel = "SHEET", description = "Number of the sheet, with or without its check.")
    private String number;

    @Option(
            names = "--from",
            paramLabel = "ROW",
            defaultValue = "1",
            description = "Begin at this row of the paper (default ${DEFAULT-VALUE}).")
    private int from;

    @Option(names = "--photo", paramLabel = "FILE", description = "A photo of the sheet, kept with the program.")
    private Path photo;

    private final List<CropPack> packs;
    private final boolean atTerminal;

    @Activate
    public EnterCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this(packs, System.console() != null);
    }

    /** @param atTerminal whether a person is there to be asked again */
    EnterCommand(List<CropPack> packs, boolean atTerminal) {
        this.packs = List.copyOf(packs);
        this.atTerminal = atTerminal;
    }

    @Override
    public Answer run(Call call) throws Exception {
        PaperRows paper = paper(call);
        Sitting sitting = new Sitting(Filing.in(call.store(), call.author()), paper, call.today(), call.author());
        if (from < 1 || from > paper.lines().size()) {
            throw new CallRefused("--from " + from + ": the sheet has rows 1 to "
                    + paper.lines().size());
        }
        sitting.goTo(from - 1);
        if (photo != null) {
            keepPhoto(call, paper.sheet());
        }
        listen(call, paper, sitting);
        return answer(paper, sitting);
    }

    private PaperRows paper(Call call) throws CallRefused {
        try {
            Sheet sheet = SheetOnFile.find(call.store().now(), number);
            return PaperRows.of(call.store().now(), packs, sheet);
        } catch (IllegalArgumentException e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private void keepPhoto(Call call, Sheet sheet) throws Exception {
        try {
            call.store().apply(SheetPhoto.keep(photo, call.folder(), sheet, call.today(), call.author()));
        } catch (IOException e) {
            throw new CallRefused("--photo " + photo + ": a file that can be copied was expected");
        }
    }

    private void listen(Call call, PaperRows paper, Sitting sitting) throws Exception {
        BufferedReader lines = new BufferedReader(new InputStreamReader(call.in(), StandardCharsets.UTF_8));
        call.out()
                .println("Sheet " + paper.sheet().sheet() + ": "
                        + paper.boxes().stream()
                                .map(box -> box.code() + " (" + shortly(box) + ")")
                                .collect(Collectors.joining(", "))
                        + ". Empty line: not entered; ns: not seen; back; . ends");
        String before = "";
        int count = 0;
        while (!sitting.isOver()) {
            ask(call, paper, sitting);
            String line = lines.readLine();
            if (line == null) {
                break;
            }
            count++;
            if (!atTerminal && sitting.isAsking() && !answers(paper, line, before)) {
                throw stopped(
                        paper, sitting, "line " + (count - 1) + " '" + before + "' is not confirmed by line " + count);
            }
            Reply reply = sitting.take(line);
            if (!reply.words().isEmpty()) {
                call.out().println("    " + reply.words());
            }
            // With nobody to ask, the lines after one that was not taken would land in the wrong rows.
            if (!atTerminal && reply.did() == Did.REFUSED) {
                throw stopped(paper, sitting, "line " + count + " '" + line + "': " + reply.words());
            }
            before = line;
        }
        if (!atTerminal && sitting.isAsking()) {
            throw stopped(paper, sitting, "the input ends at a question");
        }
    }

    private static String shortly(Box box) {
        return box.states().size() > 1
                ? box.states().get(0).code() + " to "
                        + box.states().get(box.states().size() - 1).code()
                : box.expected(false);
    }

    private static void ask(Call call, PaperRows paper, Sitting sitting) {
        String known = sitting.known(sitting.row()).stream().anyMatch(Optional::isPresent)
                ? "  ["
                        + sitting.known(sitting.row()).stream()
                                .map(value -> value.map(ScoreValue::text).orElse("-"))
                                .collect(Collectors.joining(" "))
                        + "]"
                : "";
        call.out()
                .print("%3d  %s%s: "
                        .formatted(
                                sitting.row() + 1,
                                paper.lines().get(sitting.row()).words(),
                                known));
        call.out().flush();
    }

    /** A question is answered by the same line, by a line that names its row, by taking back, or by ending. */
    private static boolean answers(PaperRows paper, String line, String before) {
        String typed = line.strip();
        if (typed.equals(before.strip()) || typed.matches("(?i)back|stop|\\.")) {
            return true;
        }
        try {
            return paper.row(typed.split("[\\s;]", 2)[0]).isPresent();
        } catch (NotTaken e) {
            return false;
        }
    }

    private CallRefused stopped(PaperRows paper, Sitting sitting, String why) {
        return new CallRefused("Sheet " + paper.sheet().sheet() + ", row " + (sitting.row() + 1) + ": " + why
                + ". Rows before it are on file (" + sitting.entered() + " values in this sitting); go on with --from "
                + (sitting.row() + 1));
    }

    private Answer answer(PaperRows paper, Sitting sitting) {
        int left = paper.lines().size() - Math.min(sitting.row(), paper.lines().size());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("sheet", paper.sheet().sheet().text());
        json.put("rows", paper.lines().size());
        json.put("entered", sitting.entered());
        json.put("blank", sitting.blank());
        json.put("not_seen", sitting.notSeen());
        json.put("questions", sitting.questions());
        json.put("rows_left", left);
        String words = "%nSheet %s: %d entered, %d not seen, %d left blank, %d asked twice%s"
                .formatted(
                        paper.sheet().sheet(),
                        sitting.entered(),
                        sitting.notSeen(),
                        sitting.blank(),
                        sitting.questions(),
                        left == 0 ? "" : "; " + left + " rows are left: --from " + (sitting.row() + 1) + " goes on");
        return Answer.of(json, words);
    }
}
