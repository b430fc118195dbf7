package pippinry.labels.internal.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pippinry.labels.internal.wanted.SheetColumns;
import pippinry.labels.internal.wanted.SheetKind;
import pippinry.labels.internal.wanted.SheetOnFile;
import pippinry.model.Program;
import pippinry.model.number.NearestNumbers;
import pippinry.model.number.Reading;
import pippinry.model.record.Sheet;
import pippinry.traits.CropPack;

/**
 * A printed sheet as it lies beside the keyboard.
 *
 * @param boxes of each row, from left to right
 * @param lines each row's number and who it is, in the order of the paper
 */
public record PaperRows(Sheet sheet, SheetKind kind, List<Box> boxes, List<Line> lines) {

    private static final int SHOWN = 3;

    /** One row. */
    public record Line(String number, String place, String who) {

        /** As it is shown before a value is asked for. */
        public String words() {
            return String.join(
                    "  ",
                    List.of(number, who, place).stream()
                            .filter(part -> !part.isBlank())
                            .toList());
        }
    }

    /** Throws {@link IllegalArgumentException} when a column is no longer known. */
    public static PaperRows of(Program program, List<CropPack> packs, Sheet sheet) {
        SheetKind kind = SheetKind.of(sheet.note()).orElse(SheetKind.TREES);
        SheetColumns columns = new SheetColumns(program, packs);
        List<Box> boxes = sheet.traitList().stream()
                .map(code -> kind.isScored() ? columns.trait(code, Box::of, Box::of) : Box.count(code))
                .toList();
        List<Line> lines = new ArrayList<>();
        new SheetOnFile(program, packs).printable(sheet).groups().forEach(group -> group.rows()
                .forEach(row -> lines.add(new Line(
                        row.tag().number(),
                        row.place().isEmpty() ? group.heading() : row.place(),
                        String.join(" ", row.tag().lines())))));
        return new PaperRows(sheet, kind, boxes, List.copyOf(lines));
    }

    Writing writing() {
        return switch (kind) {
            case TREES, POTS -> new Scores();
            case POLLINATIONS -> new Visits();
            case SEEDLOTS -> new LotCounts();
        };
    }

    /**
     * The row, counted from 0, that somebody names by its number; empty when the text is none on this sheet.
     *
     * @throws NotTaken when it is typed with a check character and is not on the sheet, or the check is wrong
     */
    public Optional<Integer> row(String typed) throws NotTaken {
        Reading reading;
        try {
            reading = Reading.of(typed);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
        List<String> numbers = lines.stream().map(Line::number).toList();
        int row = numbers.indexOf(reading.number());
        if (reading.given().isPresent() && (row < 0 || !reading.isValid())) {
            List<String> near = NearestNumbers.of(reading, numbers.stream(), SHOWN);
            throw new NotTaken((reading.isValid() ? typed + " is not on this sheet" : typed + ": the check is wrong")
                    + (near.isEmpty() ? "" : "; nearest on the sheet: " + String.join(", ", near)));
        }
        return row < 0 ? Optional.empty() : Optional.of(row);
    }
}
