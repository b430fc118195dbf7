package pippinry.model.record;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pippinry.model.value.Code;
import pippinry.model.value.Decimal;
import pippinry.model.value.PartialDate;

/** What the records' constructors ask of their values. */
final class Checks {

    private Checks() {}

    static void range(String column, OptionalInt number, int low, int high) {
        if (number.isPresent() && (number.getAsInt() < low || number.getAsInt() > high)) {
            throw new Unfit(column, number.getAsInt(), "a whole number from " + low + " to " + high);
        }
    }

    static void range(String column, OptionalDouble number, double low, double high) {
        if (number.isPresent() && !(number.getAsDouble() >= low && number.getAsDouble() <= high)) {
            String given = Decimal.write(number.getAsDouble());
            throw new Unfit(column, given, "a number from " + Decimal.write(low) + " to " + Decimal.write(high));
        }
    }

    static <T> void unlike(String column, Code<T> own, Optional<Code<T>> other) {
        if (other.isPresent() && other.get().equals(own)) {
            throw new Unfit(column, own, "another record than the one itself");
        }
    }

    /** A genotype's code stands in a table's cell for parents, where some words and signs mean something else. */
    static void parentCode(String column, Code<?> code) {
        boolean taken =
                switch (code.text()) {
                    case "op", "self", "unknown" -> true;
                    default -> code.text().indexOf('|') >= 0;
                };
        if (taken) {
            throw new Unfit(column, code, "a code other than op, self and unknown, and without |");
        }
    }

    /** A path that comes from elsewhere must never lead out of its folder, on any system. */
    static void within(String column, String path) {
        boolean leaves = path.startsWith("/")
                || path.indexOf('\\') >= 0
                || path.indexOf(':') >= 0
                || path.chars().anyMatch(Character::isISOControl)
                || List.of(path.split("/", -1)).contains("..");
        if (leaves) {
            throw new Unfit(column, path, "a path within the program's folder photos, such as 2026/0412.jpg");
        }
    }

    /** The later date may be the same day, and spans of partial dates may overlap. */
    static void order(String column, Optional<PartialDate> from, Optional<PartialDate> to) {
        if (from.isPresent()
                && to.isPresent()
                && to.get().latest().isBefore(from.get().earliest())) {
            throw new Unfit(column, to.get(), "a day not before " + from.get());
        }
    }
}
