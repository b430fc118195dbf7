package pippinry.exchange.internal.bring;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A small workbook, put together part by part as ECMA-376 describes them. */
final class Workbook {

    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private static final String MAIN = "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
    private static final String TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    private Workbook() {}

    /** @param properties of the workbook, such as the other way of counting days */
    static Path write(Path file, String properties, String firstSheet, String secondSheet) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            part(
                    zip,
                    "[Content_Types].xml",
                    "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                            + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                            + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"" + TYPES + "sheet.main+xml\"/>"
                            + "<Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\"" + TYPES
                            + "worksheet+xml\"/>"
                            + "<Override PartName=\"/xl/worksheets/sheet2.xml\" ContentType=\"" + TYPES
                            + "worksheet+xml\"/>"
                            + "<Override PartName=\"/xl/styles.xml\" ContentType=\"" + TYPES + "styles+xml\"/>"
                            + "<Override PartName=\"/xl/sharedStrings.xml\" ContentType=\"" + TYPES
                            + "sharedStrings+xml\"/></Types>");
            part(zip, "_rels/.rels", relations("officeDocument", "xl/workbook.xml"));
            part(
                    zip,
                    "xl/workbook.xml",
                    "<workbook " + MAIN
                            + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">"
                            + properties
                            + "<sheets><sheet name=\"Seedlings\" sheetId=\"1\" r:id=\"rId1\"/>"
                            + "<sheet name=\"Old\" sheetId=\"2\" r:id=\"rId2\"/></sheets></workbook>");
            part(
                    zip,
                    "xl/_rels/workbook.xml.rels",
                    relations(
                            "worksheet",
                            "worksheets/sheet1.xml",
                            "worksheet",
                            "worksheets/sheet2.xml",
                            "styles",
                            "styles.xml",
                            "sharedStrings",
                            "sharedStrings.xml"));
            part(
                    zip,
                    "xl/styles.xml",
                    "<styleSheet " + MAIN
                            + "><numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"dd/mm/yyyy\"/></numFmts>"
                            + "<cellXfs count=\"3\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/>"
                            + "<xf numFmtId=\"164\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>");
            part(
                    zip,
                    "xl/sharedStrings.xml",
                    "<sst " + MAIN + "><si><t>Number</t></si><si><t>Mother</t></si>"
                            + "<si><t>Planted</t></si><si><r><t>Fie</t></r><r><t>sta</t></r></si></sst>");
            part(zip, "xl/worksheets/sheet1.xml", sheet(firstSheet));
            part(zip, "xl/worksheets/sheet2.xml", sheet(secondSheet));
        }
        return file;
    }

    private static String sheet(String rows) {
        return "<worksheet " + MAIN + "><sheetData>" + rows + "</sheetData></worksheet>";
    }

    private static String relations(String... typesAndTargets) {
        StringBuilder relations = new StringBuilder(
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">");
        for (int i = 0; i < typesAndTargets.length; i += 2) {
            relations
                    .append("<Relationship Id=\"rId")
                    .append(i / 2 + 1)
                    .append("\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/")
                    .append(typesAndTargets[i])
                    .append("\" Target=\"")
                    .append(typesAndTargets[i + 1])
                    .append("\"/>");
        }
        return relations.append("</Relationships>").toString();
    }

    private static void part(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write((HEAD + text).getBytes(UTF_8));
        zip.closeEntry();
    }
}
