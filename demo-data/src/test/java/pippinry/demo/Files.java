package pippinry.demo;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Reads the committed tables as a stranger would: nothing of the generator is used. */
final class Files {

    static final Path DEMO = Path.of("").toAbsolutePath().endsWith("demo-data") ? Path.of("") : Path.of("demo-data");
    static final Path PROGRAM = DEMO.resolve("larkmoor");
    static final Path TRUTH = DEMO.resolve("truth");

    private static final Map<String, List<String>> KEYS = Map.of(
            "places", List.of("plant", "block", "row", "place", "from"),
            "grafts", List.of("plant", "date"),
            "chilling", List.of("lot", "from"),
            "visits", List.of("pollination", "time", "did"),
            "emergence", List.of("lot", "date"),
            "takeouts", List.of("sample", "out_on"),
            "names", List.of("subject", "name"),
            "rows", List.of("block", "row"),
            "alleles", List.of("genotype", "locus"));
    private static final List<String> EVENTS = List.of(
            "scores",
            "losses",
            "decisions",
            "care",
            "events",
            "moves",
            "tastings",
            "tasks",
            "notes",
            "costs",
            "lotmoves");

    private Files() {}

    static List<Path> sittings() {
        try (Stream<Path> folders = java.nio.file.Files.list(PROGRAM)) {
            return folders.filter(java.nio.file.Files::isDirectory).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Path> tables(Path sitting) {
        try (Stream<Path> files = java.nio.file.Files.list(sitting)) {
            return files.filter(file -> file.toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String table(Path file) {
        return file.getFileName().toString().replace(".csv", "");
    }

    static List<NamedCsvRecord> read(Path file) {
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(file)) {
            return csv.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows of a table as they stand after the last sitting. */
    static List<NamedCsvRecord> now(String table) {
        Map<String, NamedCsvRecord> rows = new LinkedHashMap<>();
        for (Path sitting : sittings()) {
            Path file = sitting.resolve(table + ".csv");
            if (java.nio.file.Files.exists(file)) {
                read(file).forEach(row -> rows.put(key(table, row, rows.size()), row));
            }
        }
        return new ArrayList<>(rows.values());
    }

    private static String key(String table, NamedCsvRecord row, int size) {
        if (EVENTS.contains(table)) {
            return "row " + size;
        }
        List<String> columns = KEYS.getOrDefault(table, row.getHeader().subList(0, 1));
        return String.join("|", columns.stream().map(row::getField).toList());
    }
}
