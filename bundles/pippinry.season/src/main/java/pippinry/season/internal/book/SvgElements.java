package pippinry.season.internal.book;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.PathIterator;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;

/** The elements of one SVG picture as text; coordinates in hundredths of a point. */
final class SvgElements {

    private static final int DECIMALS = 2;

    private final String prefix;
    private final StringBuilder body = new StringBuilder();
    private final Map<String, String> clips = new LinkedHashMap<>();

    /** @param prefix makes the ids of this picture differ from those of others on the page */
    SvgElements(String prefix) {
        this.prefix = prefix;
    }

    void fill(Shape shape, Color color, double alpha, Area clip) {
        String path = path(shape);
        if (!path.isEmpty()) {
            boolean evenOdd = shape.getPathIterator(null).getWindingRule() == PathIterator.WIND_EVEN_ODD;
            body.append("<path d=\"").append(path).append('"').append(paint("fill", color, alpha));
            body.append(evenOdd ? " fill-rule=\"evenodd\"" : "")
                    .append(clipped(clip))
                    .append("/>\n");
        }
    }

    void draw(Shape shape, BasicStroke stroke, double scale, Color color, double alpha, Area clip) {
        String path = path(shape);
        if (!path.isEmpty()) {
            body.append("<path d=\"").append(path).append("\" fill=\"none\"").append(paint("stroke", color, alpha));
            body.append(lines(stroke, scale)).append(clipped(clip)).append("/>\n");
        }
    }

    /** @param width as measured with the font it was laid out in */
    void text(String text, Font font, double width, AffineTransform where, Color color, double alpha, Area clip) {
        body.append("<text transform=\"matrix(");
        double[] matrix = new double[6];
        where.getMatrix(matrix);
        for (int i = 0; i < matrix.length; i++) {
            body.append(i == 0 ? "" : " ").append(number(matrix[i]));
        }
        body.append(")\" font-size=\"").append(number(font.getSize2D())).append('"');
        body.append(isStrong(font) ? " font-weight=\"bold\"" : "")
                .append(font.isItalic() ? " font-style=\"italic\"" : "");
        body.append(paint("fill", color, alpha));
        body.append(" textLength=\"").append(number(width)).append("\" lengthAdjust=\"spacingAndGlyphs\"");
        body.append(clipped(clip)).append('>').append(Escaped.of(text)).append("</text>\n");
    }

    private static boolean isStrong(Font font) {
        return font.isBold() || font.getFontName(java.util.Locale.ROOT).contains("Bold");
    }

    /** The whole picture. @param label read aloud in its place */
    String svg(int width, int height, String label) {
        StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
        svg.append(width)
                .append(' ')
                .append(height)
                .append("\" role=\"img\" aria-label=\"")
                .append(Escaped.of(label));
        svg.append("\" font-family=\"&quot;").append(PaperFaces.FAMILY);
        svg.append("&quot;, &quot;DejaVu Sans&quot;, Verdana, sans-serif\" xml:space=\"preserve\">\n");
        if (!clips.isEmpty()) {
            svg.append("<defs>");
            clips.forEach((path, id) -> svg.append("<clipPath id=\"")
                    .append(id)
                    .append("\"><path d=\"")
                    .append(path)
                    .append("\"/></clipPath>"));
            svg.append("</defs>\n");
        }
        return svg.append(body).append("</svg>").toString();
    }

    private String clipped(Area clip) {
        if (clip == null) {
            return "";
        }
        String id = clips.computeIfAbsent(path(clip), any -> prefix + "c" + clips.size());
        return " clip-path=\"url(#" + id + ")\"";
    }

    private static String paint(String attribute, Color color, double alpha) {
        double opacity = alpha * color.getAlpha() / 255;
        return " %s=\"#%06x\"".formatted(attribute, color.getRGB() & 0xFFFFFF)
                + (opacity < 1 ? " " + attribute + "-opacity=\"" + number(opacity) + '"' : "");
    }

    private static String lines(BasicStroke stroke, double scale) {
        String cap =
                switch (stroke.getEndCap()) {
                    case BasicStroke.CAP_ROUND -> " stroke-linecap=\"round\"";
                    case BasicStroke.CAP_SQUARE -> " stroke-linecap=\"square\"";
                    default -> "";
                };
        String join =
                switch (stroke.getLineJoin()) {
                    case BasicStroke.JOIN_ROUND -> " stroke-linejoin=\"round\"";
                    case BasicStroke.JOIN_BEVEL -> " stroke-linejoin=\"bevel\"";
                    default -> "";
                };
        return " stroke-width=\"" + number(stroke.getLineWidth() * scale) + '"' + cap + join + dashes(stroke, scale);
    }

    private static String dashes(BasicStroke stroke, double scale) {
        if (stroke.getDashArray() == null) {
            return "";
        }
        StringBuilder dashes = new StringBuilder();
        for (float dash : stroke.getDashArray()) {
            dashes.append(dashes.isEmpty() ? "" : " ").append(number(dash * scale));
        }
        return " stroke-dasharray=\"" + dashes + "\" stroke-dashoffset=\"" + number(stroke.getDashPhase() * scale)
                + '"';
    }

    private static String path(Shape shape) {
        StringBuilder path = new StringBuilder();
        double[] at = new double[6];
        for (PathIterator parts = shape.getPathIterator(null); !parts.isDone(); parts.next()) {
            switch (parts.currentSegment(at)) {
                case PathIterator.SEG_MOVETO -> segment(path, 'M', at, 2);
                case PathIterator.SEG_LINETO -> segment(path, 'L', at, 2);
                case PathIterator.SEG_QUADTO -> segment(path, 'Q', at, 4);
                case PathIterator.SEG_CUBICTO -> segment(path, 'C', at, 6);
                default -> path.append('Z');
            }
        }
        return path.toString();
    }

    private static void segment(StringBuilder path, char letter, double[] at, int numbers) {
        path.append(letter);
        for (int i = 0; i < numbers; i++) {
            path.append(i == 0 ? "" : " ").append(number(at[i]));
        }
    }

    private static String number(double value) {
        if (!Double.isFinite(value)) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
