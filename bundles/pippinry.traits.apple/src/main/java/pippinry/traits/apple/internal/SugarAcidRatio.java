package pippinry.traits.apple.internal;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import pippinry.traits.Scorer;

/** Sugar to acid: soluble solids in °Brix over acid in g per 100 ml. */
@Component
public final class SugarAcidRatio implements Scorer {

    private static final String SUGAR = "juice.ssc_brix";
    private static final String ACID = "juice.ta_gl";

    @Override
    public String trait() {
        return "index.ssc_ta";
    }

    @Override
    public Set<String> needs() {
        return Set.of(SUGAR, ACID);
    }

    @Override
    public OptionalDouble score(Map<String, Double> values) {
        if (!values.keySet().containsAll(needs()) || values.get(ACID) <= 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(values.get(SUGAR) / (values.get(ACID) / 10));
    }

    @Override
    public String method() {
        return "°Brix / (titratable acid as malic, g per 100 ml); OECD guidelines chapter (formula from memory)";
    }
}
