package pippinry.crossing.internal;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.traits.AlleleSeries;
import pippinry.traits.Compatibility;
import pippinry.traits.Fertility;
import pippinry.traits.SGenotype;

/** Whether two genotypes can fertilise each other, by their S-alleles. */
@Command(
        name = "match",
        description = "Says whether pollen of one kind can fertilise another, by their S-alleles.",
        footer = {
            "",
            "Example: seed parent S2/S3, pollen parent S2/S9:",
            "  pippinry match --seed S2/S3 --pollen S2/S9",
            "S? is an allele that is not known; a triploid has three, as S2/S3/S9."
        })
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=match",
            Subcommand.RECKONS + "=true",
            Subcommand.SUMMARY + "=whether two kinds can fertilise each other, by their S-alleles"
        })
public final class MatchCommand implements Subcommand {

    private static final AlleleSeries AS_GIVEN = AlleleSeries.open("as given");

    @Option(names = "--seed", required = true, paramLabel = "ALLELES", description = "the seed parent's S-alleles")
    String seed;

    @Option(names = "--pollen", required = true, paramLabel = "ALLELES", description = "the pollen parent's S-alleles")
    String pollen;

    @Override
    public Answer run(Call call) throws CallRefused {
        Compatibility cross = Compatibility.of(read("--seed", seed), read("--pollen", pollen));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("fertility", cross.fertility().word());
        json.put("offspring", cross.offspring());
        json.put("pollen_share", Double.isNaN(cross.pollenShare()) ? null : cross.pollenShare());
        if (cross.fertility() == Fertility.UNKNOWN) {
            json.put("possible", possible(cross));
        }
        json.put("notes", cross.notes());
        boolean yes = cross.fertility() != Fertility.NONE;
        return new Answer(json, words(cross), yes);
    }

    private static SGenotype read(String option, String text) throws CallRefused {
        try {
            return SGenotype.parse(text, AS_GIVEN);
        } catch (IllegalArgumentException e) {
            throw new CallRefused(option + ": " + e.getMessage());
        }
    }

    private static TreeSet<String> possible(Compatibility cross) {
        return cross.possible().stream().map(Fertility::word).collect(Collectors.toCollection(TreeSet::new));
    }

    private String words(Compatibility cross) {
        StringBuilder words = new StringBuilder(sentence(cross));
        cross.offspring()
                .forEach((genotype, share) ->
                        words.append("\n  ").append(genotype).append(String.format(Locale.ROOT, "  %.4g", share)));
        cross.notes().forEach(note -> words.append('\n').append(note));
        return words.toString();
    }

    private String sentence(Compatibility cross) {
        String pair = seed + " with pollen of " + pollen + ": ";
        return switch (cross.fertility()) {
            case FULL -> pair + "every grain works.";
            case HALF -> pair + "a part of the grains is rejected, the others work.";
            case NONE ->
                pair
                        + "every grain is rejected. That is a strong warning, not a proof: some kinds are partly self-fertile.";
            case UNKNOWN -> pair + "not known; it may be " + String.join(" or ", possible(cross)) + ".";
        };
    }
}
