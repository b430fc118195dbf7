package pippinry.crossing.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.statistics.proportions.Classes;
import pippinry.statistics.proportions.ExactMultinomial;
import pippinry.statistics.proportions.GoodnessOfFit;
import pippinry.statistics.proportions.Heterogeneity;

/** Holds counted classes against a ratio. */
@Command(
        name = "ratio",
        description = "Says how well counted classes of seedlings fit a ratio.",
        footer = {
            "",
            "Example: 84 clean and 16 scabbed seedlings against three to one:",
            "  pippinry ratio --observed 84,16 --expected 3:1",
            "Several families: give --observed once for each; they are pooled and compared."
        })
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=ratio", Subcommand.SUMMARY + "=how well counted classes fit a ratio"})
public final class RatioCommand implements Subcommand {

    @Option(
            names = "--observed",
            required = true,
            paramLabel = "N,N...",
            description = "seedlings counted in each class; once for each family")
    List<String> observed;

    @Option(names = "--expected", required = true, paramLabel = "A:B...", description = "the ratio, such as 3:1")
    String expected;

    @Override
    public Answer run(Call call) throws CallRefused {
        double[] ratio = parts();
        List<long[]> families = new ArrayList<>();
        for (String family : observed) {
            families.add(counts(family, ratio.length));
        }
        Classes pooled = classes(sum(families), ratio);
        Map<String, Object> json = new LinkedHashMap<>();
        List<String> notes = new ArrayList<>();
        String words = test(pooled, json, notes);
        if (families.size() > 1) {
            words += "\n" + compare(families, ratio, json, notes);
        }
        json.put("notes", notes);
        return Answer.of(json, words + (notes.isEmpty() ? "" : "\n" + String.join("\n", notes)));
    }

    private String test(Classes classes, Map<String, Object> json, List<String> notes) {
        GoodnessOfFit fit = GoodnessOfFit.of(classes);
        OptionalDouble exact = ExactMultinomial.p(classes);
        json.put("chi_square", Double.isInfinite(fit.chiSquare()) ? null : fit.chiSquare());
        json.put("df", fit.degrees());
        json.put("p", fit.p());
        json.put("p_exact", exact.isPresent() ? exact.getAsDouble() : null);
        if (classes.refuted()) {
            notes.add("A seedling stands in a class that the ratio does not allow: the ratio is refuted"
                    + " (chi-square is infinite), or the lot is mixed or a seedling misread.");
        }
        if (exact.isEmpty()) {
            notes.add(Words.say(
                    "p_exact is not given: there are %.3g outcomes, more than %.0e to go through.",
                    ExactMultinomial.outcomes(classes), ExactMultinomial.MOST_OUTCOMES));
        }
        if (fit.smallestExpected() < 5 && !classes.refuted()) {
            notes.add("A class is expected with fewer than 5 seedlings: trust p_exact more than p.");
        }
        return Words.say(
                "Chi-square %.4g with %d degrees of freedom: p = %.4g%s.",
                fit.chiSquare(),
                fit.degrees(),
                fit.p(),
                exact.isPresent() ? Words.say(", exact p = %.4g", exact.getAsDouble()) : "");
    }

    private static String compare(List<long[]> families, double[] ratio, Map<String, Object> json, List<String> notes) {
        for (double part : ratio) {
            if (part == 0) {
                notes.add("The families are not compared: the ratio has a class with part zero.");
                return "";
            }
        }
        Heterogeneity result = Heterogeneity.of(families, ratio);
        json.put("sum", part(result.sum()));
        json.put("heterogeneity", part(result.difference()));
        json.put("heterogeneity_contingency", part(result.contingency()));
        return Words.say(
                "Between families: chi-square %.4g with %d degrees of freedom, p = %.4g.",
                result.difference().chiSquare(),
                result.difference().degrees(),
                result.difference().p());
    }

    private static Map<String, Object> part(Heterogeneity.Part part) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("chi_square", part.chiSquare());
        json.put("df", part.degrees());
        json.put("p", part.p());
        return json;
    }

    private double[] parts() throws CallRefused {
        String[] texts = expected.split(":", -1);
        double[] ratio = new double[texts.length];
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] = Numbers.part("--expected", texts[i]);
        }
        return ratio;
    }

    private static long[] counts(String family, int classes) throws CallRefused {
        String[] texts = family.split(",", -1);
        if (texts.length != classes) {
            throw Numbers.refused("--observed", family, "as many counts as --expected has parts (" + classes + ")");
        }
        long[] counts = new long[texts.length];
        for (int i = 0; i < counts.length; i++) {
            counts[i] = Numbers.whole("--observed", texts[i], 0);
        }
        return counts;
    }

    private static long[] sum(List<long[]> families) {
        long[] sum = new long[families.get(0).length];
        for (long[] family : families) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += family[i];
            }
        }
        return sum;
    }

    private static Classes classes(long[] counts, double[] ratio) throws CallRefused {
        try {
            return new Classes(counts, ratio);
        } catch (IllegalArgumentException e) {
            throw new CallRefused("--observed, --expected: " + e.getMessage());
        }
    }
}
