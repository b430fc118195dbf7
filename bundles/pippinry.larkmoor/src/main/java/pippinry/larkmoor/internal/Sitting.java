package pippinry.larkmoor.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What was entered at one sitting: a folder {@code NNN-DATE-what} with plain tables and a line {@code HAND: reason}.
 *
 * @param files in the order of their names
 */
record Sitting(LocalDate day, String author, String reason, List<Path> files) {

    private static final Pattern NAME = Pattern.compile("\\d{3}-(\\d{4}-\\d{2}-\\d{2})-.+");
    private static final Pattern LINE = Pattern.compile("(\\w+): (.+)");

    /** All sittings in the folder, in the order of their numbers. */
    static List<Sitting> in(Path folder) throws IOException {
        List<Path> folders = list(folder).stream()
                .filter(path -> NAME.matcher(path.getFileName().toString()).matches())
                .toList();
        if (folders.isEmpty()) {
            throw new IOException("No seasons are in " + folder + "; build the program again");
        }
        List<Sitting> sittings = new java.util.ArrayList<>();
        for (Path sitting : folders) {
            sittings.add(read(sitting));
        }
        return sittings;
    }

    private static Sitting read(Path folder) throws IOException {
        Matcher name = NAME.matcher(folder.getFileName().toString());
        Matcher line =
                LINE.matcher(Files.readString(folder.resolve("reason.txt")).strip());
        if (!name.matches() || !line.matches()) {
            throw new IOException(folder.resolve("reason.txt") + ": a line 'HAND: reason' is expected");
        }
        List<Path> tables = list(folder).stream()
                .filter(path -> path.toString().endsWith(".csv"))
                .toList();
        return new Sitting(LocalDate.parse(name.group(1)), line.group(1), line.group(2), tables);
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.sorted().toList();
        }
    }
}
