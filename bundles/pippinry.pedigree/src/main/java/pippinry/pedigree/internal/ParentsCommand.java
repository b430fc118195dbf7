package pippinry.pedigree.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.model.Program;
import pippinry.model.ask.ParentChance;
import pippinry.model.number.NearestNumbers;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;
import pippinry.pedigree.internal.parentage.ParentsWeighed;
import pippinry.traits.CropPack;

/** Holds recorded parents against S-alleles and visible marks. */
@Command(
        description =
                "Tells which parents on record cannot be true by S-alleles and visible marks, and which of several"
                        + " candidates fits, with its chance.",
        footer = {
            "",
            "Examples:",
            "  pippinry parents --program larkmoor",
            "  pippinry parents --program larkmoor 17-010-002",
            "  pippinry parents --program larkmoor 14-006-001 --among FIE,ELS,PRI"
        })
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=parents",
            Subcommand.SUMMARY + "=which parents on record cannot be true, and which candidate fits"
        })
public final class ParentsCommand implements Subcommand {
    private static final int NEAREST = 3;

    private final List<CropPack> packs;

    @Parameters(arity = "0..1", paramLabel = "NUMBER", description = "One genotype; without it, all on file.")
    String number;

    @Option(
            names = "--among",
            split = ",",
            paramLabel = "CODE",
            description = "Weigh these as pollen parents instead of those on record.")
    List<String> among = List.of();

    @Activate
    public ParentsCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this.packs = List.copyOf(packs);
    }

    @Override
    public Answer run(Call call) throws CallRefused {
        Program program = call.program();
        ProgramLineage lineage = ProgramLineage.of(program, packs);
        if (number == null) {
            if (!among.isEmpty()) throw new CallRefused("--among: name the genotype whose pollen parent is sought");
            return all(lineage);
        }
        Optional<Genotype> child = program.find(Kinds.GENOTYPES, Code.<Genotype>of(number.strip()));
        return child.isPresent() ? one(program, lineage, child.get()) : stranger(program, number.strip());
    }

    private static Answer stranger(Program program, String number) {
        List<String> nearest = NearestNumbers.of(
                number,
                program.table(Kinds.GENOTYPES).stream().map(row -> row.code().text()),
                NEAREST);
        String words = "No genotype " + number + " is on file."
                + (nearest.isEmpty() ? "" : " Nearest: " + String.join(", ", nearest) + ".");
        return Answer.no(Map.of("nearest", nearest), words);
    }

    private static Answer all(ProgramLineage lineage) {
        List<Object> impossible = new ArrayList<>();
        List<Object> candidates = new ArrayList<>();
        StringBuilder words = new StringBuilder();
        for (Genotype genotype : lineage.parentage().genotypes()) {
            ParentsWeighed weighed = lineage.parentage().weighed(genotype);
            weighed.words().ifPresent(line -> words.append(line).append(".\n"));
            if (!weighed.possible()) impossible.add(json(weighed));
            else if (genotype.pollenParent().how() == PollenParent.How.CANDIDATES) candidates.add(json(weighed));
        }
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("impossible", impossible);
        json.put("candidates", candidates);
        json.put("notes", lineage.parentage().faults());
        lineage.parentage().faults().forEach(fault -> words.append(fault).append('\n'));
        String summary = "%d impossible, %d with several candidates%n".formatted(impossible.size(), candidates.size());
        return Answer.of(json, words + summary);
    }

    private Answer one(Program program, ProgramLineage lineage, Genotype child) throws CallRefused {
        ParentsWeighed weighed = among.isEmpty()
                ? lineage.parentage().weighed(child)
                : lineage.parentage().weighed(child, asked(program, child));
        Map<String, Object> json = json(weighed);
        List<String> doubts = lineage.doubts(child.code());
        json.put("doubts", doubts);
        json.put("notes", lineage.parentage().faults());
        String words = ParentsWords.of(weighed, doubts);
        return weighed.possible() ? Answer.of(json, words) : Answer.no(json, words);
    }

    private List<Code<Genotype>> asked(Program program, Genotype child) throws CallRefused {
        List<Code<Genotype>> asked = new ArrayList<>();
        for (String text : among) {
            Code<Genotype> code = Code.of(text.strip());
            boolean onFile = program.find(Kinds.GENOTYPES, code).isPresent();
            if (!onFile || code.equals(child.code()) || asked.contains(code)) {
                throw new CallRefused("--among: '" + text + "'; expected different genotypes on file, none of them "
                        + child.code() + " itself");
            }
            asked.add(code);
        }
        return asked;
    }

    private static Map<String, Object> json(ParentsWeighed weighed) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("genotype", weighed.child().code().text());
        json.put("possible", weighed.possible());
        json.put("against", weighed.against());
        json.put("markers", weighed.markers());
        json.put("seed_parent", seedParent(weighed));
        json.put(
                "pollen_parents",
                weighed.chances().stream().map(ParentsCommand::json).toList());
        return json;
    }

    private static Map<String, Object> seedParent(ParentsWeighed weighed) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("parent", weighed.child().seedParent().map(Code::text).orElse(null));
        json.put("chance", weighed.child().seedParent().isPresent() ? weighed.seedParent() : null);
        return json;
    }

    private static Map<String, Object> json(ParentChance chance) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("parent", chance.parent().map(Code::text).orElse(null));
        json.put("chance", chance.chance());
        json.put("possible", chance.possible());
        return json;
    }
}
