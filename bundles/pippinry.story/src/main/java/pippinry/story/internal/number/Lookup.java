package pippinry.story.internal.number;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.Subjects;
import pippinry.model.number.CheckCharacter;
import pippinry.model.number.NearestNumbers;
import pippinry.model.number.Reading;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Finds what somebody means by a number, an old tag, a name, or a place as {@code block/row/place}. */
public final class Lookup {

    private static final int NEAREST = 5;

    private final Program program;

    public Lookup(Program program) {
        this.program = program;
    }

    /** A number with a wrong check character is never found, for it may be another's. */
    public Looked look(String typed) {
        String text = typed.strip();
        Optional<Looked> exact = byNumber(text);
        if (exact.isPresent()) {
            return exact.get();
        }
        Optional<Reading> reading = reading(text);
        if (reading.isPresent() && !reading.get().isValid()) {
            return missing(text, wrongCheck(reading.get()), reading);
        }
        String number = reading.filter(read -> read.given().isPresent())
                .map(read -> text.substring(0, text.lastIndexOf('=')).strip())
                .orElse(text);
        return byNumber(number)
                .or(() -> byAnyCase(number))
                .or(() -> byName(number))
                .orElseGet(() -> missing(text, notOnFile(number), reading));
    }

    private static String wrongCheck(Reading reading) {
        return "the check character does not fit: " + reading.number() + " has " + reading.check() + " and not "
                + reading.given().orElseThrow() + ", so one sign is wrong";
    }

    private String notOnFile(String number) {
        return program.table(Kinds.NEVERGIVEN)
                .find(number)
                .map(row -> "this number was never given: " + row.value().reason())
                .orElse("it is not on file");
    }

    private static Optional<Reading> reading(String text) {
        try {
            return Optional.of(Reading.of(text));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Optional<Looked> byNumber(String key) {
        Optional<Kind<?>> kind = Subjects.kindOf(program, key);
        boolean place = kind.isEmpty() && Subjects.isOnFile(program, key);
        return kind.isPresent() || place ? Optional.of(new Looked.Found(kind, key, "")) : Optional.empty();
    }

    private Optional<Looked> byAnyCase(String typed) {
        return keys().filter(typed::equalsIgnoreCase).findFirst().flatMap(this::byNumber);
    }

    private Optional<Looked> byName(String name) {
        Set<Looked.Found> found = new LinkedHashSet<>();
        program.table(Kinds.GENOTYPES).forEach(row -> {
            if (row.value().name().equalsIgnoreCase(name)) {
                found.add(named(row.value().code().text(), "name"));
            }
        });
        program.table(Kinds.NAMES).forEach(row -> {
            if (row.value().name().equalsIgnoreCase(name)) {
                String kind = row.value().kind().isEmpty()
                        ? "further name"
                        : row.value().kind();
                found.add(named(row.value().subject().text(), kind));
            }
        });
        List<String> keys = found.stream().map(Looked.Found::key).distinct().toList();
        return switch (keys.size()) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(found.iterator().next());
            default -> Optional.of(new Looked.Several(name, keys));
        };
    }

    private Looked.Found named(String key, String by) {
        return new Looked.Found(Subjects.kindOf(program, key), key, by);
    }

    private Looked missing(String typed, String because, Optional<Reading> reading) {
        List<String> nearest = reading.map(read -> NearestNumbers.of(read, keys(), NEAREST))
                .orElseGet(() -> NearestNumbers.of(typed, keys(), NEAREST));
        return new Looked.Missing(typed, because, nearest);
    }

    private Stream<String> keys() {
        List<String> keys = new ArrayList<>();
        Kinds.ALL.stream().filter(Subjects::mayBe).forEach(kind -> addKeys(kind, keys));
        return keys.stream().distinct();
    }

    private <T extends Record> void addKeys(Kind<T> kind, List<String> keys) {
        program.table(kind).forEach(row -> keys.add(key(kind, row)));
    }

    private static <T extends Record> String key(Kind<T> kind, Row<T> row) {
        return kind.keyOf(row.value()).orElseThrow();
    }

    /** The number as it is printed, with its check character if one can be reckoned. */
    public static Optional<Character> check(String number) {
        return CheckCharacter.isReckonable(number) ? Optional.of(CheckCharacter.of(number)) : Optional.empty();
    }
}
