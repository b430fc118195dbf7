package pippinry.nursery.internal.work;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.traits.CropPack;
import pippinry.traits.PublishedRate;

/**
 * The waiting times of the nursery, each with its source. They hold for any crop until its pack says otherwise.
 */
public final class Terms {

    private static final int COLUMNS = 7;
    private static final int WEEK = 7;

    /** Names of rates in weeks, and the times that they give. */
    private static final Map<String, String> FROM_PACK =
            Map.of("chilling_weeks", "chilling-days", "emergence_weeks", "emergence");

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

    /**
     * The usual times with those of a crop in their place: cold for the seed and the weeks to emergence.
     *
     * @param pack empty for a crop that nobody knows
     */
    public static Terms of(Optional<CropPack> pack) {
        Terms terms = usual();
        for (Map.Entry<String, String> taken : FROM_PACK.entrySet()) {
            Optional<PublishedRate> rate = pack.flatMap(known -> known.rate(taken.getKey()));
            terms = rate.isPresent() ? terms.with(taken.getValue(), inDays(rate.get())) : terms;
        }
        return terms;
    }

    private static Term inDays(PublishedRate weeks) {
        return new Term(
                days(weeks.low()),
                weeks.typical() * WEEK,
                days(weeks.high()),
                "days",
                weeks.provenance().basis().word(),
                weeks.provenance().words());
    }

    private static OptionalDouble days(OptionalDouble weeks) {
        return weeks.isPresent() ? OptionalDouble.of(weeks.getAsDouble() * WEEK) : weeks;
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
