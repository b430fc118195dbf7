package pippinry.labels.internal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.labels.internal.sheet.SheetFormat;
import pippinry.labels.internal.sheet.SheetFormats;
import pippinry.labels.internal.tag.Placing;
import pippinry.labels.internal.tag.TagPrinting;
import pippinry.labels.internal.tag.TagsPrinted;
import pippinry.labels.internal.tag.TestPage;
import pippinry.labels.internal.wanted.PrintedTags;
import pippinry.labels.internal.wanted.TagKind;
import pippinry.labels.internal.wanted.WantedTags;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates;
import pippinry.model.record.Kinds;

/** Prints tags for what a program has on file. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=tags", Subcommand.SUMMARY + "=tags to print, with a code that a camera reads"})
@Command(
        description = {
            "Prints tags on sheets of labels as a PDF: the number large, its check character after =, parents small,"
                    + " and a code that a camera reads. Print the file at 100 %%. Without --for it tells what there is.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  pippinry tags --program larkmoor --for pollinations --sheet A4-65 --out tags.pdf",
            "  pippinry tags --program larkmoor --for neutral --count 40 --sheet A4-65 --start 12 --out spare.pdf",
            "  pippinry tags --program larkmoor --for trees --block A --row 7 --sheet A4-21 --read-from 1.6 --out row7.pdf",
            "  pippinry tags --sheet A4-65 --test --out test.pdf     a page for plain paper, to measure the offset",
            "  pippinry tags --list                                  the sheets there are"
        })
public final class TagsCommand implements Subcommand {
    @Mixin
    private WishOptions wish;

    @Mixin
    private SheetOptions sheet;

    @Mixin
    private StyleOptions style;

    @Option(names = "--out", paramLabel = "FILE.pdf", description = "The file to write.")
    private Path out;

    @Option(
            names = "--text",
            paramLabel = "FILE.txt",
            description = "Also writes a plain list to emboss by hand: one tag a line, number with check first.")
    private Path text;

    @Option(
            names = "--record",
            description = "Note in the program that these tags are printed, and put planned branches on file."
                    + " Neutral tags are put on file always, so that no number is printed twice.")
    private boolean record;

    @Option(names = "--test", description = "Print only a test page of the sheet for plain paper.")
    private boolean test;

    @Option(names = "--list", description = "Only list the sheets of labels and where their measures come from.")
    private boolean list;

    private final Optional<HouseRates> rates;

    @Activate
    public TagsCommand(
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    HouseRates rates) {
        this.rates = Optional.ofNullable(rates);
    }

    @Override
    public Answer run(Call call) throws Exception {
        try {
            SheetFormats formats = sheet.formats();
            if (list) {
                return listed(formats);
            }
            if (test) {
                return tested(sheet.placing(formats));
            }
            return wish.names() ? printed(call, formats) : overview(call);
        } catch (IllegalArgumentException e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private static Answer listed(SheetFormats formats) {
        List<Map<String, Object>> rows =
                formats.all().stream().map(TagsCommand::row).toList();
        String words = String.join(
                "\n",
                formats.all().stream()
                        .map(format -> "%-8s %3d labels of %s x %s mm; %s"
                                .formatted(
                                        format.name(),
                                        format.count(),
                                        format.labelWidth(),
                                        format.labelHeight(),
                                        format.basis()))
                        .toList());
        return Answer.of(Map.of("sheets", rows), words + "\nroll-WxH   a roll with labels of W x H mm");
    }

    private static Map<String, Object> row(SheetFormat format) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("sheet", format.name());
        row.put("labels", format.count());
        row.put("label_w_mm", format.labelWidth());
        row.put("label_h_mm", format.labelHeight());
        row.put("basis", format.basis());
        return row;
    }

    private Answer overview(Call call) throws CallRefused {
        if (out != null || text != null) {
            wish.kind();
        }
        return new TagOverview(wish.wish(call.program(), call.today(), rates)).answer();
    }

    private Path out() throws CallRefused {
        if (out == null) {
            throw new CallRefused("Where to? Name the file with --out FILE.pdf");
        }
        return out;
    }

    private Answer tested(Placing placing) throws CallRefused, IOException {
        try (PdfFile file = PdfFile.at(out())) {
            try (OutputStream stream = file.open()) {
                new TestPage(placing.format()).print(placing.offsetX(), placing.offsetY(), stream);
            }
            file.keep();
        }
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", out.toString());
        json.put("sheet", placing.format().name());
        json.put("pages", 1);
        return Answer.of(
                json, "Test page of " + placing.format() + " in " + out + "; print it at 100 % on plain paper");
    }

    private Answer printed(Call call, SheetFormats formats) throws Exception {
        TagKind kind = wish.kind();
        Placing placing = sheet.placing(formats);
        TagPrinting printing = new TagPrinting(formats, style.style(), placing);
        Path target = out();
        boolean writes = record || kind == TagKind.NEUTRAL && wish.numbers.isEmpty();
        Program program = writes ? call.store().now() : call.program();
        WantedTags wanted = kind.wanted(wish.wish(program, call.today(), rates));
        if (wanted.tags().isEmpty()) {
            return TagsAnswer.nothing(kind, wish.waiting);
        }
        try (PdfFile file = PdfFile.at(target)) {
            TagsPrinted printed;
            try (OutputStream stream = file.open()) {
                printed = printing.print("Tags for " + kind.word(), wanted.tags(), stream);
            }
            if (writes) {
                call.store().apply(edit(call, program, kind, wanted));
            }
            writeText(wanted);
            file.keep();
            return new TagsAnswer(kind, wanted, printed, placing.format(), writes).in(target);
        }
    }

    private void writeText(WantedTags wanted) throws CallRefused, IOException {
        if (text == null) {
            return;
        }
        try (PdfFile file = PdfFile.at(text)) {
            try (OutputStream stream = file.open()) {
                stream.write(wanted.asText().getBytes(StandardCharsets.UTF_8));
            }
            file.keep();
        }
    }

    private static Edit edit(Call call, Program program, TagKind kind, WantedTags wanted) {
        Edit.Draft edit = Edit.by(call.author(), "tags printed for " + kind.word());
        wanted.given().forEach(branch -> edit.put(Kinds.POLLINATIONS, branch));
        List<String> numbers = wanted.tags().stream().map(tag -> tag.number()).toList();
        PrintedTags.of(program).note(numbers, kind, call.today(), call.author(), edit);
        return edit.done();
    }
}
