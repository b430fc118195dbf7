package pippinry.traits.apple.internal;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import pippinry.traits.Scorer;

/**
 * Streif index of harvest maturity: firmness / (°Brix x starch). DeLong et al. 1999, HortScience 34:1251-1255. Firmness in
 * newtons makes it 9.80665 times the form with kilograms-force, so the two are never compared.
 */
@Component
public final class StreifIndex implements Scorer {

    private static final String FIRMNESS = "flesh.firmness_n";
    private static final String SUGAR = "juice.ssc_brix";
    private static final String STARCH = "fruit.starch_1_10";

    @Override
    public String trait() {
        return "index.streif";
    }

    @Override
    public Set<String> needs() {
        return Set.of(FIRMNESS, SUGAR, STARCH);
    }

    @Override
    public OptionalDouble score(Map<String, Double> values) {
        if (!values.keySet().containsAll(needs())) {
            return OptionalDouble.empty();
        }
        double below = values.get(SUGAR) * values.get(STARCH);
        return below <= 0 ? OptionalDouble.empty() : OptionalDouble.of(values.get(FIRMNESS) / below);
    }

    @Override
    public String method() {
        return "firmness in N / (°Brix x starch 1-10); DeLong et al. 1999, HortScience 34:1251-1255";
    }
}
