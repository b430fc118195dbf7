package pippinry.nursery.internal.work;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The waiting times of the nursery, each with its source. They hold for any crop until its pack says otherwise.
 */
public final class Terms {

    private static final int COLUMNS = 7;

    private final Map<String, Term> terms;

    private Terms(Map<String, Term> terms) {
        this.terms = Map.copyOf(terms);
    }

    /** The times that come with the nursery. */
    public static Terms usual() {
        try (InputStream table = Terms.class.getResourceAsStream("terms.csv")) {
            return read(new String(table.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same with one time replaced, as a crop pack or the breeder gives it. */
    public Terms with(String name, Term term) {
        Map<String, Term> changed = new HashMap<>(terms);
        changed.put(name, term);
        return new Terms(changed);
    }

    /** A name that is not there is a mistake of ours. */
    public Term get(String name) {
        Term term = terms.get(name);
        if (term == null) {
            throw new IllegalArgumentException("No waiting time is called " + name);
        }
        return term;
    }

    private static Terms read(String table) {
        Map<String, Term> terms = new HashMap<>();
        table.lines().skip(1).map(Terms::cells).forEach(cells -> terms.put(cells.get(0), term(cells)));
        return new Terms(terms);
    }

    private static Term term(List<String> cells) {
        return new Term(
                number(cells.get(1)),
                Double.parseDouble(cells.get(2)),
                number(cells.get(3)),
                cells.get(4),
                cells.get(5),
                cells.get(6));
    }

    private static OptionalDouble number(String text) {
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    /** Our own table has quotes around the last cell only. */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>(List.of(line.split(",", COLUMNS)));
        cells.set(COLUMNS - 1, cells.get(COLUMNS - 1).replaceAll("^\"|\"$", ""));
        return cells;
    }
}
