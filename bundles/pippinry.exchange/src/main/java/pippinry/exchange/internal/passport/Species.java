package pippinry.exchange.internal.passport;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The botanical name of a crop. */
record Species(String genus, String epithet, String author) {

    static Optional<Species> ofCrop(String crop) {
        try (InputStream in = Species.class.getResourceAsStream("crops.csv");
                CsvReader<NamedCsvRecord> rows =
                        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return rows.stream()
                    .filter(row -> row.getField("crop").equals(crop))
                    .map(row -> new Species(row.getField("genus"), row.getField("species"), row.getField("author")))
                    .findFirst();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A species' own name is two words; anything else names no species. */
    static Optional<Species> named(String name) {
        String[] words = name.strip().split(" +");
        boolean botanical = words.length == 2 && words[0].matches("[A-Z][a-z]+") && words[1].matches("[a-z×.-]+");
        return botanical ? Optional.of(new Species(words[0], words[1], "")) : Optional.empty();
    }
}
