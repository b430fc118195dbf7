package pippinry.labels.internal.wanted;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pippinry.labels.internal.score.ScoreSheet;
import pippinry.model.Program;
import pippinry.model.number.Reading;
import pippinry.model.record.Kinds;
import pippinry.model.record.Sheet;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.traits.CropPack;

/** Sheets as they are filed, and what is printed from them. */
public final class SheetOnFile {
    private static final Pattern NUMBER = Pattern.compile("S-(\\d{1,7})");

    private final Program program;
    private final List<CropPack> packs;

    public SheetOnFile(Program program, List<CropPack> packs) {
        this.program = program;
        this.packs = List.copyOf(packs);
    }

    /** A sheet with the next free number. */
    public static Sheet next(
            Program program, SheetKind kind, List<String> columns, List<String> subjects, String block, LocalDate day) {
        int number = program.table(Kinds.SHEETS).stream()
                .map(sheet -> NUMBER.matcher(sheet.sheet().text()))
                .filter(Matcher::matches)
                .mapToInt(known -> Integer.parseInt(known.group(1)))
                .max()
                .orElse(0);
        String code;
        do {
            code = String.format(Locale.ROOT, "S-%04d", ++number);
        } while (!Numbered.mayBeGiven(code));
        return new Sheet(
                Code.of(code),
                Optional.of(PartialDate.of(day)),
                "",
                block,
                Sheet.joined(columns),
                Sheet.joined(subjects),
                kind.word());
    }

    /** The sheet of this number, typed with or without its check. */
    public static Sheet find(Program program, String typed) {
        Reading reading = Reading.of(typed);
        if (!reading.isValid()) {
            throw new IllegalArgumentException("Sheet " + typed + ": the check is wrong; read the paper again");
        }
        return program.find(Kinds.SHEETS, Code.<Sheet>of(reading.number()))
                .orElseThrow(() -> new IllegalArgumentException("No sheet " + reading.number() + " is on file"));
    }

    /** What is printed of it; the same sheet gives the same paper. */
    public ScoreSheet printable(Sheet sheet) {
        SheetKind kind = SheetKind.of(sheet.note()).orElse(SheetKind.TREES);
        return new ScoreSheet(
                Numbered.tag(sheet.sheet().text()),
                kind.title(),
                about(sheet),
                new SheetColumns(program, packs).of(kind, sheet.traitList()),
                new SheetRows(program).of(sheet.subjectList()));
    }

    private String about(Sheet sheet) {
        return Phrases.row(
                program.setting("name").orElse(""),
                sheet.block().isBlank() ? "" : "block " + sheet.block(),
                sheet.date().map(date -> "printed " + date).orElse(""),
                sheet.subjectList().size() + " lines");
    }
}
