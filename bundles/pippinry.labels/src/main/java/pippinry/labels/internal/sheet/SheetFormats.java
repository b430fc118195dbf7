package pippinry.labels.internal.sheet;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The sheets on file, in the order of the table; rolls of any measure besides. */
public final class SheetFormats {
    private static final String TABLE = "label-sheets.csv";
    private static final Pattern ROLL = Pattern.compile("roll-(\\d{1,3}(?:\\.\\d{1,2})?)x(\\d{1,3}(?:\\.\\d{1,2})?)");

    private final List<SheetFormat> formats;

    public SheetFormats(List<SheetFormat> formats) {
        this.formats = List.copyOf(formats);
    }

    /** The sheets that ship with the program. */
    public static SheetFormats shipped() {
        try (Reader table =
                new InputStreamReader(SheetFormats.class.getResourceAsStream(TABLE), StandardCharsets.UTF_8)) {
            return new SheetFormats(SheetTable.read(table, TABLE));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** These and a person's own, which may not take a name that is on file. */
    public SheetFormats with(List<SheetFormat> own) {
        List<SheetFormat> all = new ArrayList<>(formats);
        for (SheetFormat format : own) {
            if (all.stream().anyMatch(known -> known.name().equalsIgnoreCase(format.name()))) {
                throw new IllegalArgumentException("There are two sheets named " + format.name());
            }
            all.add(format);
        }
        return new SheetFormats(all);
    }

    public List<SheetFormat> all() {
        return formats;
    }

    /** The sheet of that name, upper and lower case alike; {@link IllegalArgumentException} lists the names there are. */
    public SheetFormat named(String name) {
        return onFile(name).or(() -> roll(name)).orElseThrow(() -> unknown(name));
    }

    private Optional<SheetFormat> onFile(String name) {
        return formats.stream()
                .filter(format -> format.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    private static Optional<SheetFormat> roll(String name) {
        Matcher roll = ROLL.matcher(name.strip().toLowerCase(Locale.ROOT));
        return roll.matches()
                ? Optional.of(SheetFormat.roll(Double.parseDouble(roll.group(1)), Double.parseDouble(roll.group(2))))
                : Optional.empty();
    }

    private IllegalArgumentException unknown(String name) {
        String names = formats.stream().map(SheetFormat::name).collect(Collectors.joining(", "));
        return new IllegalArgumentException("There is no sheet named '" + name + "'. The sheets are " + names
                + ", or roll-WxH for a roll, such as roll-57x32 (mm)");
    }
}
