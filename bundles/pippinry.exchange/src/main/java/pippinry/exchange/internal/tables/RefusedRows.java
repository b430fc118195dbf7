package pippinry.exchange.internal.tables;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Writes the rows that were not taken in to a file of their own, with the reason: to mend there and bring in again. */
public final class RefusedRows {

    private RefusedRows() {}

    /**
     * A file that is not there yet, beside this one or, where that cannot be written, in the working folder; its name up to the
     * first dot names the same table.
     */
    public static Path free(Path file) {
        String name = file.getFileName().toString();
        int dot = name.indexOf('.');
        String table = dot < 0 ? name : name.substring(0, dot);
        boolean writable = Files.isWritable(file.toAbsolutePath().getParent());
        return IntStream.iterate(1, number -> number + 1)
                .mapToObj(number -> table + ".refused" + (number == 1 ? "" : "-" + number) + ".csv")
                .map(free -> writable ? file.resolveSibling(free) : Path.of(free))
                .filter(Files::notExists)
                .findFirst()
                .orElseThrow();
    }

    /** @param refusals of rows of this file; reasons of the same row are joined */
    public static void write(Path file, List<Refusal> refusals, Path out) throws IOException, FileRefused {
        Map<Long, String> reasons = refusals.stream()
                .collect(Collectors.toMap(
                        Refusal::line, Refusal::inRow, (one, other) -> one + "; " + other, TreeMap::new));
        try (CsvLines lines = CsvLines.open(file);
                CsvWriter csv =
                        CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out, StandardCharsets.UTF_8)) {
            Optional<CsvLines.Line> header = lines.next();
            if (header.isEmpty()) {
                return;
            }
            Trim trim = new Trim(header.get().cells());
            csv.writeRecord(trim.row(header.get().cells(), Heading.OURS.get(0), Heading.OURS.get(1)));
            for (Optional<CsvLines.Line> line = lines.next(); line.isPresent(); line = lines.next()) {
                String reason = reasons.get(line.get().number());
                if (reason != null) {
                    csv.writeRecord(trim.row(
                            line.get().cells(), Long.toString(line.get().number()), reason));
                }
            }
        }
    }

    /** Rows as wide as the header, without our columns of an earlier time. */
    private record Trim(List<String> header) {

        List<String> row(List<String> cells, String line, String reason) {
            List<String> row = new ArrayList<>();
            for (int i = 0; i < header.size(); i++) {
                if (!Heading.OURS.contains(header.get(i).strip())) {
                    row.add(i < cells.size() ? cells.get(i) : "");
                }
            }
            row.add(line);
            row.add(reason);
            return row;
        }
    }
}
