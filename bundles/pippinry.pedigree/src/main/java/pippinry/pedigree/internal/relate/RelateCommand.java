package pippinry.pedigree.internal.relate;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.InputRow;
import pippinry.commandline.InputTable;
import pippinry.commandline.Subcommand;
import pippinry.pedigree.internal.kinship.Descendants;
import pippinry.pedigree.internal.kinship.Founders;
import pippinry.pedigree.internal.kinship.Kinship;
import pippinry.pedigree.internal.kinship.LinksBetween;
import pippinry.pedigree.internal.kinship.PedigreeGraph;

/** Inbreeding, coancestry and founders from a table of parents. */
@Command(
        description = "Tells from a table of parents how inbred each is, how related pairs are, and how many founders"
                + " stand behind a group.",
        footer = {
            "",
            "PED.csv has the columns code,seed_parent,pollen_parent. A parent without a row is a founder; an empty"
                    + " or unknown one is a new founder each time. pollen_parent may be op (open) or self; either"
                    + " parent may be candidates such as A|B: then the relationship is the average over them. Columns seed_link and"
                    + " pollen_link, if there, say which links are likely or doubtful.",
            "",
            "Example:",
            "  pippinry relate parents.csv --pairs planned.csv --json"
        })
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=relate",
            Subcommand.SUMMARY + "=how related and how inbred, from a table of parents",
            Subcommand.RECKONS + "=true"
        })
public final class RelateCommand implements Subcommand {

    @Parameters(paramLabel = "PED.csv", description = "The table of parents.")
    Path pedigree;

    @Option(names = "--pairs", paramLabel = "P.csv", description = "Pairs whose coancestry is wanted: columns a,b.")
    Path pairs;

    @Option(
            names = "--of",
            paramLabel = "GROUP.csv",
            description = "The group whose founders are wanted: column code. Without it: all who have no offspring.")
    Path group;

    @Option(
            names = "--pollen-group",
            paramLabel = "POLLEN.csv",
            description =
                    "Who may have given pollen where the pollen parent is op: column code. Without it: all who are"
                            + " named as parents. Those of a later generation than the seed parent, and the seed parent itself,"
                            + " do not count.")
    Path pollenGroup;

    @Activate
    public RelateCommand() {}

    @Override
    public Answer run(Call call) throws CallRefused {
        PedigreeTable table = PedigreeTable.read(pedigree);
        if (pollenGroup != null) table.pollenGroup(members(table, pollenGroup));
        PedigreeGraph graph = table.graph();
        int[] chosen = group == null ? table.withoutOffspring() : members(table, group);
        Kinship kinship = Kinship.of(graph);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("inbreeding", new InbreedingByCode(table, kinship));
        List<Map<String, Object>> asked = pairs == null ? List.of() : coancestries(table, kinship);
        if (pairs != null) json.put("kinship", asked);
        Map<String, Object> founders = founders(kinship, chosen);
        json.put("founders", founders);
        List<String> notes = notes(table, graph, asked);
        if (!notes.isEmpty()) json.put("notes", notes);
        return Answer.of(json, RelateWords.of(table, kinship, asked, chosen, founders, notes));
    }

    private static int[] members(PedigreeTable table, Path file) throws CallRefused {
        Set<Integer> members = new LinkedHashSet<>();
        try (InputTable rows = InputTable.open(file, "code")) {
            while (rows.hasNext()) {
                InputRow row = rows.next();
                if (!members.add(table.named(row, "code"))) throw row.refused("code", "each code once");
            }
        }
        if (members.isEmpty()) throw new CallRefused(file + " line 2, column code: no row; expected at least one code");
        return members.stream().mapToInt(Integer::intValue).toArray();
    }

    private List<Map<String, Object>> coancestries(PedigreeTable table, Kinship kinship) throws CallRefused {
        Kinship.Pairs reckoning = kinship.pairs();
        List<Map<String, Object>> rows = new ArrayList<>();
        try (InputTable asked = InputTable.open(pairs, "a", "b")) {
            while (asked.hasNext()) {
                InputRow row = asked.next();
                Map<String, Object> pair = new LinkedHashMap<>();
                pair.put("a", row.text("a"));
                pair.put("b", row.text("b"));
                pair.put("f", reckoning.coancestry(table.named(row, "a"), table.named(row, "b")));
                rows.add(pair);
            }
        }
        return rows;
    }

    private static Map<String, Object> founders(Kinship kinship, int[] group) {
        boolean nobody = group.length == 0;
        Map<String, Object> founders = new LinkedHashMap<>();
        founders.put(
                "effective_number",
                nobody ? null : Founders.of(kinship.graph(), group).effectiveNumber());
        founders.put("genome_equivalents", nobody ? null : Founders.genomeEquivalents(kinship, group));
        return founders;
    }

    private List<String> notes(PedigreeTable table, PedigreeGraph graph, List<Map<String, Object>> asked) {
        List<String> notes = new ArrayList<>();
        if (table.openPollinated() > 0) {
            String who = pollenGroup == null ? "named as parents in the table" : "named in " + pollenGroup;
            notes.add(table.openPollinated() + " with an open pollen parent: average relationship (Henderson 1988) over"
                    + " those " + who
                    + ", of no later generation than the seed parent, without the seed parent itself.");
        }
        if (table.withCandidates() > 0) {
            notes.add(table.withCandidates() + " parents are one of several candidates: average relationship"
                    + " (Henderson 1988), each candidate as likely as the others.");
        }
        if (!table.doubted().isEmpty()) addDoubts(notes, table, graph, asked);
        return notes;
    }

    private static void addDoubts(
            List<String> notes, PedigreeTable table, PedigreeGraph graph, List<Map<String, Object>> asked) {
        int below = Descendants.of(graph, table.doubted()).cardinality();
        notes.add("%d have a parent who is not sure; %d with all who descend from them."
                .formatted(table.doubted().cardinality(), below));
        for (Map<String, Object> pair : asked) {
            int a = table.find(String.valueOf(pair.get("a"))).orElseThrow();
            int b = table.find(String.valueOf(pair.get("b"))).orElseThrow();
            String doubts = LinksBetween.of(graph, a, b).stream()
                    .map(table::doubt)
                    .flatMap(Optional::stream)
                    .collect(Collectors.joining("; "));
            if (!doubts.isEmpty()) notes.add("f(%s, %s): %s.".formatted(pair.get("a"), pair.get("b"), doubts));
        }
    }
}
