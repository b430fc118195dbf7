package pippinry.season.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import pippinry.commandline.Subcommand;
import pippinry.model.StoreFailed;
import pippinry.panels.Chapter;
import pippinry.season.internal.book.Book;
import pippinry.season.internal.book.HtmlBook;
import pippinry.season.internal.book.PdfBook;

/** Writes the season book. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=book", Subcommand.SUMMARY + "=the season book: a page to read and its PDF"})
@Command(
        description = "Writes the season book: what is due and how the program stands, as one HTML page and as PDF.",
        footer = {"", "Example:", "  pippinry book --program larkmoor --out book"})
public final class BookCommand implements Subcommand {

    private static final String NAME = "season-book";

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path out;

    private final List<Chapter> chapters;

    @Activate
    public BookCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<Chapter> chapters) {
        this.chapters = chapters;
    }

    @Override
    public Answer run(Call call) throws Exception {
        Book book = Book.of(call.program(), call.today(), chapters);
        Path html = out.resolve(NAME + ".html");
        Path pdf = out.resolve(NAME + ".pdf");
        int pages = write(book, html, pdf);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("html", html.toString());
        json.put("pdf", pdf.toString());
        json.put("pages", pages);
        json.put("chapters", book.chapters());
        json.put("failed", book.failed());
        return new Answer(json, words(book, html, pdf, pages), book.failed().isEmpty());
    }

    private int write(Book book, Path html, Path pdf) {
        try {
            Files.createDirectories(out);
            WholeFile.write(html, stream -> {
                stream.write(HtmlBook.of(book).getBytes(StandardCharsets.UTF_8));
                return 1;
            });
            return WholeFile.write(pdf, stream -> PdfBook.write(book, stream));
        } catch (IOException e) {
            throw new StoreFailed("The season book could not be written to " + out + ": " + e, e);
        }
    }

    private static String words(Book book, Path html, Path pdf, int pages) {
        StringBuilder words = new StringBuilder("The season book of " + book.name() + " for " + book.day() + ":\n");
        words.append("  ").append(html).append('\n');
        words.append("  ").append(pdf).append(" (").append(pages).append(pages == 1 ? " page)" : " pages)");
        book.failed().forEach(what -> words.append("\nThis chapter could not be written: ")
                .append(what));
        return words.toString();
    }
}
