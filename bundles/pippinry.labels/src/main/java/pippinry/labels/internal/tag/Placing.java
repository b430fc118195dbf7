package pippinry.labels.internal.tag;

import pippinry.labels.internal.paper.Box;
import pippinry.labels.internal.sheet.SheetFormat;

/**
 * Where tags fall on sheets.
 *
 * @param start the first free label of the first sheet, counted from 1
 * @param copies of each tag, one beside the other
 * @param offsetX shift of everything to the right in mm, against a printer that prints beside
 * @param offsetY shift of everything down in mm
 */
public record Placing(SheetFormat format, int start, int copies, double offsetX, double offsetY, Marks marks) {
    public Placing {
        if (start < 1 || start > format.count()) {
            throw new IllegalArgumentException(
                    "Sheet " + format.name() + " has labels 1 to " + format.count() + "; none to start at is " + start);
        }
        if (copies < 1 || copies > 100) {
            throw new IllegalArgumentException("1 to 100 copies of a tag may be printed, not " + copies);
        }
        requireOnPage(format, offsetX, offsetY);
    }

    private static void requireOnPage(SheetFormat format, double offsetX, double offsetY) {
        Box page = new Box(0, 0, format.pageWidth(), format.pageHeight());
        Box first = format.label(0).shiftedBy(offsetX, offsetY);
        Box last = format.label(format.count() - 1).shiftedBy(offsetX, offsetY);
        if (!page.holds(first.inset(Rooms.margin(first))) || !page.holds(last.inset(Rooms.margin(last)))) {
            throw new IllegalArgumentException("An offset of " + offsetX + " and " + offsetY
                    + " mm pushes labels of sheet " + format.name() + " off the page");
        }
    }

    /** From the first label, one copy, no shift, no marks. */
    public static Placing on(SheetFormat format) {
        return new Placing(format, 1, 1, 0, 0, Marks.NONE);
    }

    /** The page, from 0, on which the n-th label to be printed falls. */
    int page(int n) {
        return (start - 1 + n) / format.count();
    }

    /** Where on its page the n-th label to be printed falls, shift included. */
    Box label(int n) {
        return format.label((start - 1 + n) % format.count()).shiftedBy(offsetX, offsetY);
    }
}
