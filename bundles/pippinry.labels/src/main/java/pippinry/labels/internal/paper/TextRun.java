package pippinry.labels.internal.paper;

import pippinry.libs.fonts.Face;

/** A piece of text in its place: letter size, left end and baseline in mm from the top left corner of page or label. */
public record TextRun(Face face, double size, String text, double x, double baseline) {
    public TextRun movedBy(double right, double down) {
        return new TextRun(face, size, text, x + right, baseline + down);
    }
}
