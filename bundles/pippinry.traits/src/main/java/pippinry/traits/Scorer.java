package pippinry.traits;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.osgi.annotation.versioning.ConsumerType;

/** Computes a trait from others, such as a ratio of sugar and acid. One small service each. */
@ConsumerType
public interface Scorer {

    /** Code of the trait it computes. */
    String trait();

    /** Codes of the traits it needs; their values come in the units of those traits. */
    Set<String> needs();

    /** The value; empty when one that is needed is missing or the formula does not hold there. */
    OptionalDouble score(Map<String, Double> values);

    /** The formula in words, with its source. */
    String method();
}
