package pippinry.season.internal.book;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.GradientPaint;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import pippinry.model.Program;
import pippinry.panels.Chapter;
import pippinry.panels.Page;
import pippinry.panels.Picture;

class BookTest {

    private static final String NASTY = "<script>alert('x')</script> \"quoted\" & 'more' ]]> \u0000 \uD800";
    private static final String HEBREW = "תפוח גן";
    private static final Picture NASTY_PICTURE = (graphics, width, height) -> {
        graphics.drawString(NASTY, 5, 20);
        graphics.drawString(HEBREW, 5, 40);
        graphics.setClip(0, 0, width, 50);
        graphics.fillRect(2, 44, 20, 20);
    };

    @Test
    void nothingThatIsWrittenCanBecomeMarkup() throws Exception {
        String html = HtmlBook.of(nastyBook());
        assertFalse(html.toLowerCase(java.util.Locale.ROOT).contains("<script"));
        assertFalse(html.contains("\"quoted\""));
        assertEquals(
                NASTY.replace('\u0000', ' ').replace('\uD800', ' '),
                svg(html).getDocumentElement().getAttribute("aria-label"));
    }

    @Test
    void aPictureInThePageIsWellFormedAndKeepsItsTextAsText() throws Exception {
        NodeList texts = svg(HtmlBook.of(nastyBook())).getElementsByTagName("text");
        assertEquals(2, texts.getLength());
        assertEquals(HEBREW, texts.item(1).getTextContent());
        double width = Double.parseDouble(
                texts.item(0).getAttributes().getNamedItem("textLength").getNodeValue());
        assertEquals(
                PaperFaces.plain(9)
                        .getStringBounds(NASTY, new java.awt.font.FontRenderContext(null, true, true))
                        .getWidth(),
                width,
                0.01);
    }

    @Test
    void thePageNeedsNothingFromOutside() {
        String html = HtmlBook.of(nastyBook());
        assertFalse(html.matches("(?s).*(src|href)=\"(?!data:|#).*"), "a link to outside");
        assertTrue(html.contains("default-src 'none'"));
    }

    @Test
    void aPictureThatIsNotMadeOfLinesIsPutInAsPixels() {
        Picture gradient = (graphics, width, height) -> {
            graphics.setPaint(new GradientPaint(0, 0, Color.RED, width, 0, Color.BLUE));
            graphics.fillRect(0, 0, width, height);
        };
        String html = HtmlBook.of(book(page -> page.picture(gradient, 0.2, "Red to blue")));
        assertTrue(html.contains("<img alt=\"Red to blue\" src=\"data:image/png;base64,"));
    }

    @Test
    void theSameProgramAndDayGiveTheSameBytes() throws IOException {
        assertEquals(HtmlBook.of(nastyBook()), HtmlBook.of(nastyBook()));
        assertArrayEquals(pdf(nastyBook()), pdf(nastyBook()));
    }

    @Test
    void paperShowsAllTextAndEmbedsItsLetters() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(nastyBook()))) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("<script>alert('x')</script> \"quoted\" & 'more' ]]>"), text);
            assertTrue(text.contains("Caution: " + "Mind the ladder"), text);
            for (PDPage page : document.getPages()) {
                assertEmbedded(page.getResources());
            }
        }
    }

    @Test
    void aTableThatBreaksOverPagesRepeatsItsHeadersAndLosesNoRow() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            rows.add(List.of("row" + i, "some words about it"));
        }
        try (PDDocument document = Loader.loadPDF(pdf(book(page -> page.table(List.of("Batch", "Words"), rows))))) {
            assertTrue(document.getNumberOfPages() > 2);
            for (int page = 2; page <= document.getNumberOfPages(); page++) {
                assertTrue(text(document, page).contains("Batch"), "page " + page);
                assertTrue(text(document, page).contains(page + " of " + document.getNumberOfPages()));
            }
            String all = new PDFTextStripper().getText(document);
            rows.forEach(row -> assertTrue(all.contains(row.get(0) + " "), row.get(0)));
        }
    }

    @Test
    void chaptersAreListedWithTheirPages() throws IOException {
        Book book = Book.of(
                Program.empty(),
                LocalDate.parse("2026-03-27"),
                List.of(
                        chapter(2, "Second", page -> page.paragraph("two")),
                        chapter(1, "First", page -> page.paragraph("one"))));
        try (PDDocument document = Loader.loadPDF(pdf(book))) {
            assertTrue(text(document, 1).replaceAll("\\s+", " ").contains("First 2 Second 2"), text(document, 1));
            assertEquals(
                    "First",
                    document.getDocumentCatalog()
                            .getDocumentOutline()
                            .getFirstChild()
                            .getTitle());
        }
    }

    @Test
    void aChapterWithNothingToSayIsLeftOutAndOneThatFailsIsNamed() {
        Book book = Book.of(
                Program.empty(),
                LocalDate.parse("2026-03-27"),
                List.of(chapter(1, "Silent", page -> {}), chapter(2, "Broken", page -> {
                    throw new IllegalStateException("no figures");
                })));
        assertEquals(List.of(), book.chapters());
        assertEquals(1, book.failed().size());
        assertTrue(HtmlBook.of(book).contains("Broken: java.lang.IllegalStateException: no figures"));
    }

    @Test
    void wordsFromRightToLeftAreDrawnAsOutlinesNotBackwards() throws IOException {
        assertTrue(PaperType.needsLayout(HEBREW));
        assertFalse(PaperType.needsLayout("26-014/3 Fiesta × Topaz"));
    }

    private static Book nastyBook() {
        return book(page -> {
            page.heading(NASTY);
            page.paragraph(NASTY + " " + HEBREW);
            page.caution("Mind the ladder");
            page.table(List.of(NASTY, "n"), List.of(List.of(NASTY, "12"), List.of(HEBREW, "3")));
            page.picture(NASTY_PICTURE, 0.2, NASTY);
        });
    }

    private static Book book(Consumer<Page> writing) {
        return Book.of(Program.empty(), LocalDate.parse("2026-03-27"), List.of(chapter(1, NASTY, writing)));
    }

    private static Chapter chapter(int order, String title, Consumer<Page> writing) {
        return new Chapter() {
            @Override
            public int order() {
                return order;
            }

            @Override
            public String title() {
                return title;
            }

            @Override
            public void write(Program program, LocalDate today, Page page) {
                writing.accept(page);
            }
        };
    }

    private static byte[] pdf(Book book) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PdfBook.write(book, bytes);
        return bytes.toByteArray();
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    private static void assertEmbedded(PDResources resources) throws IOException {
        for (COSName name : resources.getFontNames()) {
            PDFont font = resources.getFont(name);
            assertTrue(font.isEmbedded() && font.getName().contains("DejaVu"), font.getName());
        }
    }

    private static Document svg(String html) throws Exception {
        String svg = html.substring(html.indexOf("<svg"), html.indexOf("</svg>") + 6);
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }
}
