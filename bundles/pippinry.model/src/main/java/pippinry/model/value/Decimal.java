package pippinry.model.value;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Writes and reads numbers of the plain tables: a point, no exponent, no superfluous zeros. */
public final class Decimal {

    private static final Pattern FORM = Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?");

    private Decimal() {}

    public static String write(double number) {
        BigDecimal exact = new BigDecimal(Double.toString(number));
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    /** @throws IllegalArgumentException if the text is no finite number */
    public static double read(String text) {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("a number with a decimal point");
        }
        double number = Double.parseDouble(text);
        if (Double.isInfinite(number)) {
            throw new IllegalArgumentException("a number below 10^308");
        }
        return number;
    }
}
