package pippinry.labels.internal.tag;

import pippinry.libs.fonts.Face;

/** A piece of text in its place on the label: letter size, left end and baseline in mm from the top left corner. */
record TextRun(Face face, double size, String text, double x, double baseline) {
    TextRun movedBy(double right, double down) {
        return new TextRun(face, size, text, x + right, baseline + down);
    }
}
