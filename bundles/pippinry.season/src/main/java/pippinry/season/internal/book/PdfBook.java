package pippinry.season.internal.book;

import java.awt.Color;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitWidthDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import pippinry.panels.Palette;

/** The book on A4 paper: letters embedded, pictures as lines, pages numbered, chapters listed. The same book gives the same bytes. */
public final class PdfBook {

    private static final double BODY = 9.5;
    private static final double LINE = 1.35;
    private static final double FOOT = 36;
    /** A chapter begins on a new page unless nearly half of the page is left. */
    private static final double ROOM_FOR_CHAPTER = 330;

    private final Book book;
    private final String title;
    private final Pen pen;
    private final PdfTable table;
    private final int[] firstPages;
    private double listTop;

    private PdfBook(Book book, String title, Pen pen) {
        this.book = book;
        this.title = title;
        this.pen = pen;
        this.table = new PdfTable(pen);
        this.firstPages = new int[book.sections().size()];
    }

    /** @return how many pages it has */
    public static int write(Book book, OutputStream out) throws IOException {
        return write(book, book.title(), true, out);
    }

    /** The same without a page for title and chapters. */
    public static int writeSheet(Book sheet, OutputStream out) throws IOException {
        return write(sheet, sheet.name() + ", " + sheet.chapters().get(0), false, out);
    }

    private static int write(Book book, String title, boolean titled, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDDocumentInformation about = new PDDocumentInformation();
            about.setTitle(title + ", " + book.day());
            about.setCreator("Pippinry");
            document.setDocumentInformation(about);
            document.getDocumentCatalog().setLanguage("en");
            int pages;
            try (Pen pen = new Pen(document)) {
                PdfBook paper = new PdfBook(book, title, pen);
                paper.write(titled);
                document.getDocumentCatalog().setDocumentOutline(paper.outline());
                pages = pen.pages();
            }
            // No clock and no chance: the identity comes from what the book says.
            document.setDocumentId((long) (title + book.day() + book.chapters()).hashCode());
            document.save(out);
            return pages;
        }
    }

    private void write(boolean titled) throws IOException {
        if (titled) {
            title();
        }
        pen.newPage();
        for (int i = 0; i < book.sections().size(); i++) {
            pen.down(pen.isAtTop() ? 0 : 26);
            pen.ensure(ROOM_FOR_CHAPTER);
            firstPages[i] = pen.pages() - 1;
            section(book.sections().get(i));
        }
        if (titled) {
            listChapters();
        }
        numberPages(titled ? 1 : 0);
    }

    private void title() throws IOException {
        pen.newPage();
        pen.down(90);
        lines(pen.strong(), 30, light().text(), book.name(), 0);
        pen.down(4);
        lines(pen.plain(), 14, light().quiet(), "Season book, " + book.day(), 0);
        pen.down(40);
        listTop = pen.y();
        pen.down(book.sections().size() * 18.0);
        for (String what : book.failed()) {
            caution("This chapter could not be written: " + what);
        }
    }

    private void section(Section section) throws IOException {
        lines(pen.strong(), 19, light().accent(), section.title(), 0);
        pen.down(6);
        for (int i = 0; i < section.blocks().size(); i++) {
            if (section.blocks().get(i) instanceof Block.Heading) {
                pen.ensure(room(section.blocks(), i));
            }
            block(section.blocks().get(i));
        }
    }

    /** A heading stays with what it heads: the words after it and the beginning of a table. */
    private double room(List<Block> blocks, int heading) {
        double room = 30;
        for (int i = heading + 1; i < blocks.size(); i++) {
            if (blocks.get(i) instanceof Block.Paragraph paragraph) {
                room += height(paragraph);
            } else {
                return room + (blocks.get(i) instanceof Block.Figure ? 0 : 60);
            }
        }
        return room;
    }

    private double height(Block.Paragraph paragraph) {
        int lines = Wrapping.lines(
                        paragraph.text(), Setting.TEXT_WIDTH, pen.plain().at(BODY))
                .size();
        return lines * BODY * LINE + 5;
    }

    private void block(Block block) throws IOException {
        if (block instanceof Block.Heading heading) {
            pen.down(pen.isAtTop() ? 0 : 10);
            lines(pen.strong(), 12, light().text(), heading.text(), 0);
            pen.down(2);
        } else if (block instanceof Block.Paragraph paragraph) {
            lines(pen.plain(), BODY, light().text(), paragraph.text(), 0);
            pen.down(5);
        } else if (block instanceof Block.Caution caution) {
            caution("Caution: " + caution.text());
        } else if (block instanceof Block.Grid grid) {
            table.draw(grid);
            pen.down(8);
        } else if (block instanceof Block.Figure figure) {
            figure(figure);
        }
    }

    private void figure(Block.Figure figure) throws IOException {
        int height = (int) Math.round(Setting.TEXT_WIDTH * figure.aspect());
        List<String> caption =
                Wrapping.lines(figure.caption(), Setting.TEXT_WIDTH, pen.plain().at(8.5));
        pen.ensure(height + 6 + caption.size() * 8.5 * LINE);
        pen.picture(figure, Setting.TEXT_WIDTH, height);
        pen.down(height + 4);
        lines(pen.plain(), 8.5, light().quiet(), figure.caption(), 0);
        pen.down(8);
    }

    private void caution(String text) throws IOException {
        List<String> lines =
                Wrapping.lines(text, Setting.TEXT_WIDTH - 14, pen.plain().at(BODY));
        double height = lines.size() * BODY * LINE + 6;
        pen.ensure(height);
        pen.box(light().warning(), Setting.MARGIN, 0, 3, height);
        pen.down(2);
        lines(pen.plain(), BODY, light().text(), text, 12);
        pen.down(9);
    }

    private void lines(PaperType type, double size, Color color, String text, double indent) throws IOException {
        for (String line : Wrapping.lines(text, Setting.TEXT_WIDTH - indent, type.at(size))) {
            pen.ensure(size * LINE);
            pen.text(type, size, color, line, Setting.MARGIN + indent, size);
            pen.down(size * LINE);
        }
    }

    private void listChapters() throws IOException {
        for (int i = 0; i < firstPages.length; i++) {
            double height = listTop - 12 - i * 18.0;
            String number = Integer.toString(firstPages[i] + 1);
            double right = Setting.MARGIN + Setting.TEXT_WIDTH - pen.plain().width(number, 11);
            String title = Wrapping.lines(
                            book.sections().get(i).title(),
                            Setting.TEXT_WIDTH - 40,
                            pen.plain().at(11))
                    .get(0);
            pen.onPage(0, pen.plain(), 11, light().text(), title, Setting.MARGIN, height);
            pen.onPage(0, pen.plain(), 11, light().quiet(), number, right, height);
        }
    }

    private void numberPages(int first) throws IOException {
        for (int page = first; page < pen.pages(); page++) {
            String left = title + ", " + book.day();
            String right = (page + 1) + " of " + pen.pages();
            double end = Setting.MARGIN + Setting.TEXT_WIDTH - pen.plain().width(right, 8);
            pen.onPage(page, pen.plain(), 8, light().quiet(), left, Setting.MARGIN, FOOT);
            pen.onPage(page, pen.plain(), 8, light().quiet(), right, end, FOOT);
        }
    }

    private PDDocumentOutline outline() {
        PDDocumentOutline outline = new PDDocumentOutline();
        for (int i = 0; i < firstPages.length; i++) {
            PDPageFitWidthDestination there = new PDPageFitWidthDestination();
            there.setPage(pen.page(firstPages[i]));
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(book.sections().get(i).title());
            item.setDestination(there);
            outline.addLast(item);
        }
        return outline;
    }

    private static Palette light() {
        return Palette.light();
    }
}
