package pippinry.labels.internal;

import java.io.OutputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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
import pippinry.labels.internal.score.ScoreSheet;
import pippinry.labels.internal.score.ScoreSheetPrinting;
import pippinry.labels.internal.wanted.SheetKind;
import pippinry.labels.internal.wanted.SheetOnFile;
import pippinry.labels.internal.wanted.Wish;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Sheet;
import pippinry.traits.CropPack;

/** Prints score and count sheets, and puts them on file so that they can be typed in row by row. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=sheets",
            Subcommand.SUMMARY + "=score and count sheets to carry out and fill in by pencil"
        })
@Command(
        description = {
            "Prints a score or count sheet in walking order as a PDF: number, code, boxes. The sheet gets a number"
                    + " and is put on file with its rows, so that what was written is typed in the same order.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  pippinry sheets --program larkmoor --trait scab_leaf --trait mildew --block A --out scab.pdf",
            "  pippinry sheets --program larkmoor --for pollinations --out round.pdf",
            "  pippinry sheets --program larkmoor --again S-0012 --out again.pdf"
        })
public final class SheetsCommand implements Subcommand {
    @Option(
            names = "--for",
            paramLabel = "KIND",
            defaultValue = "trees",
            description = "trees (default), pots, pollinations or seedlots.")
    private String kind;

    @Option(
            names = "--trait",
            paramLabel = "TRAIT",
            split = ",",
            description = "A column: a trait; for pollinations and seedlots a count (set, june, harvest, emerged ...).")
    private List<String> traits = List.of();

    @Option(names = "--block", paramLabel = "BLOCK", description = "Only in this block.")
    private String block;

    @Option(names = "--row", paramLabel = "ROW", description = "Only in this row.")
    private String row;

    @Option(names = "--cross", paramLabel = "CROSS", description = "Only of this cross.")
    private String cross;

    @Option(names = "--year", paramLabel = "YEAR", description = "Year of crosses or harvest (default: this year).")
    private Integer year;

    @Option(names = "--again", paramLabel = "SHEET", description = "Print this sheet again as it is on file.")
    private String again;

    @Option(names = "--out", paramLabel = "FILE.pdf", description = "The file to write.")
    private Path out;

    private final List<CropPack> packs;

    @Activate
    public SheetsCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this.packs = packs;
    }

    @Override
    public Answer run(Call call) throws Exception {
        if (out == null) {
            throw new CallRefused("Where to? Name the file with --out FILE.pdf");
        }
        try {
            return again == null ? fresh(call) : onceMore(call);
        } catch (IllegalArgumentException e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private Answer onceMore(Call call) throws Exception {
        Program program = call.program();
        Sheet sheet = SheetOnFile.find(program, again);
        return print(new SheetOnFile(program, packs).printable(sheet), sheet, Optional.empty(), call);
    }

    private Answer fresh(Call call) throws Exception {
        SheetKind of = SheetKind.of(kind)
                .orElseThrow(() -> new CallRefused("--for " + kind + ": expected one of " + SheetKind.words()));
        if (of.isScored() && traits.isEmpty()) {
            throw new CallRefused("Which traits? Name each with --trait, such as --trait scab_leaf");
        }
        Program program = call.store().now();
        List<String> subjects = of.subjects(wish(call, program));
        if (subjects.isEmpty()) {
            return Answer.no(
                    Map.of("lines", 0, "pages", 0), "There is nothing to walk past: no " + of.word() + " there");
        }
        Sheet sheet = SheetOnFile.next(
                program,
                of,
                traits.isEmpty() ? of.usualColumns() : traits,
                subjects,
                Optional.ofNullable(block).orElse(""),
                call.today());
        ScoreSheet printable = new SheetOnFile(program, packs).printable(sheet);
        Edit edit = Edit.by(call.author(), "sheet " + sheet.sheet() + " printed")
                .put(Kinds.SHEETS, sheet)
                .done();
        return print(printable, sheet, Optional.of(edit), call);
    }

    private Wish wish(Call call, Program program) {
        return Wish.of(program, call.today())
                .within(Optional.ofNullable(cross), Optional.ofNullable(block), Optional.ofNullable(row))
                .in(year == null ? OptionalInt.empty() : OptionalInt.of(year));
    }

    private Answer print(ScoreSheet printable, Sheet sheet, Optional<Edit> edit, Call call) throws Exception {
        try (PdfFile file = PdfFile.at(out)) {
            ScoreSheetPrinting.Printed printed;
            try (OutputStream stream = file.open()) {
                printed = new ScoreSheetPrinting(printable).print(stream);
            }
            if (edit.isPresent()) {
                call.store().apply(edit.get());
            }
            file.keep();
            return answer(printable, sheet, printed);
        }
    }

    private Answer answer(ScoreSheet printable, Sheet sheet, ScoreSheetPrinting.Printed printed) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", out.toString());
        json.put("sheet", printable.number().code());
        json.put("lines", printed.lines());
        json.put("pages", printed.pages());
        json.put("columns", sheet.traitList());
        json.put("subjects", sheet.subjectList());
        json.put("lacking_signs", printed.missing().stream().sorted().toList());
        String lacking = printed.missing().isEmpty()
                ? ""
                : "\nMind: the font has no sign " + String.join(" ", printed.missing()) + "; an empty box stands there";
        return Answer.of(
                json,
                "%s %s with %d lines on %d pages, in %s%s"
                        .formatted(
                                printable.title(),
                                printable.number().code(),
                                printed.lines(),
                                printed.pages(),
                                out,
                                lacking));
    }
}
