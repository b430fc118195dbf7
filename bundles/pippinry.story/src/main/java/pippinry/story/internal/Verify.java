package pippinry.story.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.Subcommand;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.story.internal.check.Finding;
import pippinry.story.internal.check.Verification;

/** Reads a whole program and tells whether it holds together. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=verify",
            Subcommand.SUMMARY + "=reads everything and checks that it holds together"
        })
@Command(
        description = {
            "Reads the whole program and its history; checks every link, number and count.",
            "What cannot be is a fault; what is worth a look is a question. Faults give exit code 1."
        },
        footer = {"", "Example:", "  pippinry verify --program larkmoor"})
public final class Verify implements Subcommand {

    private static final int SHOWN = 50;

    @Option(names = "--all", description = "List every question, not only the first " + SHOWN + ".")
    private boolean all;

    @Activate
    public Verify() {}

    @Override
    public Answer run(Call call) throws Exception {
        try (ProgramStore store = call.folders().openToRead(call.folder(), call.clock())) {
            List<Finding> findings = new Verification(store)
                    .run(done -> call.progress("Reading " + store.folder().getFileName(), done));
            Map<Boolean, List<Finding>> byFault = findings.stream().collect(Collectors.partitioningBy(Finding::fault));
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("edits", store.now().edit());
            json.put("records", records(store.now()));
            json.put("faults", byFault.get(true).stream().map(Verify::json).toList());
            json.put("questions", byFault.get(false).stream().map(Verify::json).toList());
            json.put("notices", store.notices());
            boolean holds = byFault.get(true).isEmpty();
            return new Answer(json, words(store, byFault), holds);
        }
    }

    private static Map<String, Object> records(Program program) {
        Map<String, Object> records = new LinkedHashMap<>();
        for (Kind<?> kind : Kinds.ALL) {
            records.put(kind.table(), program.table(kind).size());
        }
        return records;
    }

    private static Map<String, Object> json(Finding finding) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("table", finding.table());
        json.put("key", finding.key());
        json.put("column", finding.column());
        json.put("value", finding.value());
        json.put("reason", finding.reason());
        return json;
    }

    private String words(ProgramStore store, Map<Boolean, List<Finding>> byFault) {
        int records = Kinds.ALL.stream()
                .mapToInt(kind -> store.now().table(kind).size())
                .sum();
        StringBuilder words = new StringBuilder();
        store.notices().forEach(notice -> words.append("Note: ").append(notice).append('\n'));
        list(words, "Fault", byFault.get(true), Integer.MAX_VALUE);
        list(words, "Question", byFault.get(false), all ? Integer.MAX_VALUE : SHOWN);
        words.append(records).append(" records and ").append(store.now().edit()).append(" edits were read. ");
        int faults = byFault.get(true).size();
        return words.append(
                        faults == 0
                                ? "The program holds together."
                                : faults == 1 ? "There is a fault." : "There are " + faults + " faults.")
                .toString();
    }

    private static void list(StringBuilder words, String title, List<Finding> findings, int most) {
        findings.stream()
                .limit(most)
                .forEach(finding ->
                        words.append(title).append(": ").append(finding).append('\n'));
        if (findings.size() > most) {
            words.append("and ").append(findings.size() - most).append(" more questions; --all lists them\n");
        }
    }
}
