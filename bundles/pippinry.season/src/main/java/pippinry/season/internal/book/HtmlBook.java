package pippinry.season.internal.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The book as one HTML page that needs nothing else: no script, no file, no network. */
public final class HtmlBook {

    private final Book book;
    private final StringBuilder html = new StringBuilder();
    private int pictures;

    private HtmlBook(Book book) {
        this.book = book;
    }

    public static String of(Book book) {
        return new HtmlBook(book).whole();
    }

    private String whole() {
        html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ")
                .append("style-src 'unsafe-inline'; img-src data:\">\n");
        html.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
        html.append(Escaped.of(book.title()))
                .append("</title>\n<style>\n")
                .append(style())
                .append("</style>\n</head>\n<body>\n");
        head();
        html.append("<main>\n");
        for (int i = 0; i < book.sections().size(); i++) {
            section(i + 1, book.sections().get(i));
        }
        return html.append("</main>\n</body>\n</html>\n").toString();
    }

    private void head() {
        html.append("<header>\n");
        element("h1", "", book.name());
        element("p", " class=\"day\"", "Season book, " + book.day());
        html.append("<nav><ol>\n");
        for (int i = 0; i < book.sections().size(); i++) {
            html.append("<li><a href=\"#s").append(i + 1).append("\" dir=\"auto\">");
            html.append(Escaped.of(book.sections().get(i).title())).append("</a></li>\n");
        }
        html.append("</ol></nav>\n");
        book.failed().forEach(what -> element("p", " class=\"caution\"", "This chapter could not be written: " + what));
        html.append("</header>\n");
    }

    private void section(int number, Section section) {
        html.append("<section id=\"s").append(number).append("\">\n");
        element("h2", "", section.title());
        section.blocks().forEach(this::block);
        html.append("</section>\n");
    }

    private void block(Block block) {
        if (block instanceof Block.Heading heading) {
            element("h3", "", heading.text());
        } else if (block instanceof Block.Paragraph paragraph) {
            element("p", "", paragraph.text());
        } else if (block instanceof Block.Caution caution) {
            element("p", " class=\"caution\"", "Caution: " + caution.text());
        } else if (block instanceof Block.Grid grid) {
            grid(grid);
        } else if (block instanceof Block.Figure figure) {
            pictures++;
            html.append("<figure>\n").append(HtmlPicture.of(figure, pictures)).append('\n');
            element("figcaption", "", figure.caption());
            html.append("</figure>\n");
        }
    }

    private void grid(Block.Grid grid) {
        html.append("<div class=\"wide\"><table>\n<thead><tr>");
        for (int column = 0; column < grid.headers().size(); column++) {
            element("th", right(grid, column), grid.headers().get(column));
        }
        html.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : grid.rows()) {
            html.append("<tr>");
            for (int column = 0; column < row.size(); column++) {
                element("td", right(grid, column), row.get(column));
            }
            html.append("</tr>\n");
        }
        html.append("</tbody></table></div>\n");
    }

    private static String right(Block.Grid grid, int column) {
        return grid.isNumeric(column) ? " class=\"n\"" : "";
    }

    /** Names may run from right to left: each text finds its own direction. */
    private void element(String name, String attributes, String text) {
        html.append('<').append(name).append(attributes).append(" dir=\"auto\">");
        html.append(Escaped.of(text)).append("</").append(name).append('>');
        html.append(name.startsWith("t") ? "" : "\n");
    }

    private static String style() {
        try (InputStream file = HtmlBook.class.getResourceAsStream("book.css")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
