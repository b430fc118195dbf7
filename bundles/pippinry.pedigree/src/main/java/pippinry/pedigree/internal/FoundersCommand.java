package pippinry.pedigree.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.pedigree.internal.kinship.Completeness;
import pippinry.pedigree.internal.kinship.Founders;
import pippinry.pedigree.internal.kinship.Kinship;
import pippinry.pedigree.internal.kinship.MajorAncestors;
import pippinry.traits.CropPack;

/** On whom a program rests, and whether its base narrows. */
@Command(
        description =
                "Tells on how many founders a program or a group rests, what each gave, through whom it came, and how"
                        + " inbred and related the group is.",
        footer = {
            "",
            "Examples:",
            "  pippinry founders --program larkmoor",
            "  pippinry founders --program larkmoor --of 11-001-005,15-007-031"
        })
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=founders",
            Subcommand.SUMMARY + "=on how many founders a program rests, and through whom"
        })
public final class FoundersCommand implements Subcommand {
    private static final int GENERATIONS = 5;
    private static final int MOST_ANCESTORS = 100;
    private static final int SHOWN = 12;

    private final List<CropPack> packs;

    @Option(
            names = "--of",
            split = ",",
            paramLabel = "CODE",
            description = "The group. Without it: all who have no offspring.")
    List<String> of = List.of();

    @Activate
    public FoundersCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this.packs = List.copyOf(packs);
    }

    @Override
    public Answer run(Call call) throws CallRefused {
        Program program = call.program();
        ProgramPedigree pedigree = ProgramLineage.of(program, packs).pedigree();
        int[] group = of.isEmpty() ? pedigree.withoutOffspring() : asked(program, pedigree);
        if (group.length == 0) {
            return Answer.no(Map.of("group", 0), "No genotype is on file yet. 'pippinry import' brings some in.");
        }
        Map<String, Object> json = figures(pedigree, group);
        return Answer.of(json, words(json));
    }

    private int[] asked(Program program, ProgramPedigree pedigree) throws CallRefused {
        for (String text : of) {
            if (program.find(Kinds.GENOTYPES, Code.<Genotype>of(text.strip())).isEmpty()) {
                throw new CallRefused("--of: '" + text + "'; expected genotypes on file, parted by commas");
            }
        }
        return of.stream()
                .map(text -> Code.<Genotype>of(text.strip()))
                .distinct()
                .mapToInt(pedigree::number)
                .toArray();
    }

    private static Map<String, Object> figures(ProgramPedigree pedigree, int[] group) {
        Kinship kinship = pedigree.kinship();
        Founders founders = Founders.of(kinship.graph(), group);
        MajorAncestors ancestors = MajorAncestors.of(kinship.graph(), group, MOST_ANCESTORS);
        Completeness known = Completeness.of(kinship.graph(), GENERATIONS);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("group", group.length);
        json.put("mean_inbreeding", mean(group, kinship::inbreeding));
        json.put("mean_coancestry", kinship.meanCoancestry(group));
        json.put("founders", founders.shares().size());
        json.put("effective_number", founders.effectiveNumber());
        json.put("effective_ancestors", ancestors.effectiveNumber());
        json.put("effective_ancestors_at_least", ancestors.effectiveNumberAtLeast());
        json.put("genome_equivalents", Founders.genomeEquivalents(kinship, group));
        json.put("completeness", mean(group, known::index));
        json.put("equivalent_generations", mean(group, known::equivalentGenerations));
        json.put("shares", shares(pedigree, founders));
        json.put("ancestors", ancestors(pedigree, ancestors));
        return json;
    }

    private static double mean(int[] group, java.util.function.IntToDoubleFunction of) {
        return Arrays.stream(group).mapToDouble(of).average().orElse(0);
    }

    private static List<Map<String, Object>> shares(ProgramPedigree pedigree, Founders founders) {
        List<Map<String, Object>> shares = new ArrayList<>();
        for (Founders.Share share : founders.shares()) {
            String code = pedigree.genotype(share.individual()).code().text();
            String who =
                    switch (share.who()) {
                        case ITSELF -> code;
                        case UNKNOWN_SEED_PARENT -> "unknown seed parent of " + code;
                        case UNKNOWN_POLLEN_PARENT -> "unknown pollen parent of " + code;
                    };
            shares.add(part("founder", who, share.part()));
        }
        return shares;
    }

    private static List<Map<String, Object>> ancestors(ProgramPedigree pedigree, MajorAncestors ancestors) {
        return ancestors.parts().stream()
                .map(part -> part(
                        "ancestor", pedigree.genotype(part.individual()).code().text(), part.part()))
                .toList();
    }

    private static Map<String, Object> part(String what, String who, double part) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put(what, who);
        json.put("part", part);
        return json;
    }

    private static String words(Map<String, Object> json) {
        StringBuilder words = new StringBuilder(String.format(
                Locale.ROOT,
                """
                %d genotypes rest on %d founders, as many as %.1f that gave the same each; what is left of these is worth %.1f.
                Mean inbreeding %.3f, mean coancestry %.3f: that is the inbreeding to come if all were crossed with all.
                Of five generations %.0f %% of the pedigree is known on the weaker and the stronger side taken together.
                """,
                json.get("group"),
                json.get("founders"),
                json.get("effective_number"),
                json.get("genome_equivalents"),
                json.get("mean_inbreeding"),
                json.get("mean_coancestry"),
                100 * (double) json.get("completeness")));
        list(words, "Founders", "founder", (List<?>) json.get("shares"));
        list(words, "Ancestors that add most, each to those above", "ancestor", (List<?>) json.get("ancestors"));
        return words.toString();
    }

    private static void list(StringBuilder words, String title, String what, List<?> parts) {
        words.append(title).append(":\n");
        IntStream.range(0, Math.min(SHOWN, parts.size())).forEach(i -> {
            Map<?, ?> part = (Map<?, ?>) parts.get(i);
            words.append(
                    String.format(Locale.ROOT, "  %5.1f %%  %s%n", 100 * (double) part.get("part"), part.get(what)));
        });
        if (parts.size() > SHOWN) words.append("  and %d more, with --json%n".formatted(parts.size() - SHOWN));
    }
}
