package pippinry.exchange.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.exchange.internal.bring.Bringing;
import pippinry.exchange.internal.bring.DateOrder;
import pippinry.exchange.internal.bring.ListReader;
import pippinry.exchange.internal.bring.Mapping;
import pippinry.exchange.internal.bring.OwnList;
import pippinry.exchange.internal.tables.FileRefused;
import pippinry.model.Change;
import pippinry.model.Edit;
import pippinry.model.HistoryLine;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Brings a person's own list in. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=bring", Subcommand.SUMMARY + "=brings a list of your own in, from CSV or xlsx"})
@Command(
        description = {
            "Brings in a list that you have kept in a way of your own, from a CSV file or an xlsx workbook.",
            "Shows ten rows as they are read. What is clear comes in; the rest is kept as tasks to be sorted out, with its"
                    + " original text. Columns that go nowhere are kept as notes."
        },
        footer = {
            "",
            "Examples:",
            "  pippinry bring seedlings.xlsx --program larkmoor --look",
            "  pippinry bring seedlings.xlsx --program larkmoor --map \"Brix 2024=score:juice.ssc_brix\" --map Id=code"
        })
public final class BringList implements Subcommand {

    private static final int SHOWN = 10;

    @Parameters(index = "0", paramLabel = "FILE", description = "The list; its first row names the columns.")
    private Path file;

    @Option(
            names = "--map",
            paramLabel = "COLUMN=FIELD",
            description = "Where a column goes: a column of a plain table, as plants.rootstock, or score:TRAIT;"
                    + " nothing after the sign keeps it as a note. Others go where their names suggest.")
    private Map<String, String> map = new LinkedHashMap<>();

    @Option(
            names = "--as",
            paramLabel = "TABLE",
            defaultValue = "genotypes",
            description = "What the list is about; ${DEFAULT-VALUE} if it is left out.")
    private String table;

    @Option(
            names = "--sheet",
            paramLabel = "NAME",
            description = "The sheet of a workbook; the first if it is left out.")
    private String sheet;

    @Option(names = "--dates", paramLabel = "ORDER", description = "day-first or month-first, for dates as 3/4/2016.")
    private String dates;

    @Option(names = "--look", description = "Only show how the list would be read.")
    private boolean look;

    @Activate
    public BringList() {}

    @Override
    public Answer run(Call call) throws Exception {
        Kind<?> meant = Kinds.named(table)
                .orElseThrow(() -> new CallRefused("--as " + table + ": this is no table; one of "
                        + String.join(", ", Kinds.ALL.stream().map(Kind::table).toList())));
        try {
            OwnList list = new ListReader(file).read(Optional.ofNullable(sheet));
            Mapping mapping = Mapping.of(list.header(), meant, map);
            Bringing bringing = new Bringing(call.program(), list, mapping, meant, order(), call.today());
            Optional<Edit> edit = bringing.edit(call.author());
            Optional<HistoryLine> line = look || edit.isEmpty()
                    ? Optional.empty()
                    : Optional.of(call.store().apply(edit.get()));
            return answer(list, mapping, bringing, line);
        } catch (FileRefused e) {
            throw new CallRefused(e.getMessage());
        } catch (Mapping.Unknown e) {
            throw new CallRefused("--map: " + e.getMessage());
        }
    }

    private Optional<DateOrder> order() throws CallRefused {
        if (dates == null) {
            return Optional.empty();
        }
        return Optional.of(DateOrder.named(dates)
                .orElseThrow(() -> new CallRefused("--dates " + dates + ": day-first or month-first is expected")));
    }

    private Answer answer(OwnList list, Mapping mapping, Bringing bringing, Optional<HistoryLine> line) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("columns", mapping.told());
        json.put("rows", list.rows().size());
        json.put("clear", bringing.clear().size());
        json.put("to_be_sorted_out", bringing.unclear().size());
        json.put(
                "shown",
                list.rows().stream()
                        .limit(SHOWN)
                        .map(row -> shown(bringing, row))
                        .toList());
        json.put(
                "unclear",
                list.rows().stream()
                        .filter(row -> bringing.unclear().containsKey(row.line()))
                        .map(row -> shown(bringing, row))
                        .toList());
        json.put("edit", line.map(HistoryLine::number).orElse(null));
        return Answer.of(json, words(list, mapping, bringing, line));
    }

    private static Map<String, Object> shown(Bringing bringing, OwnList.ListRow row) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("row", row.line());
        json.put("original", bringing.original(row));
        json.put("read_as", read(bringing, row));
        json.put("why_not", bringing.unclear().get(row.line()));
        return json;
    }

    private static List<String> read(Bringing bringing, OwnList.ListRow row) {
        return bringing.clear().getOrDefault(row.line(), List.of()).stream()
                .map(BringList::told)
                .toList();
    }

    private static <T extends Record> String told(Change<T> change) {
        T row = change.after().orElseThrow();
        List<String> cells = new ArrayList<>();
        change.kind().columns().forEach(column -> {
            String text = change.kind().cell(row, column);
            if (!text.isEmpty()) {
                cells.add(column + " " + text);
            }
        });
        return change.kind() + ": " + String.join("; ", cells);
    }

    private String words(OwnList list, Mapping mapping, Bringing bringing, Optional<HistoryLine> line) {
        StringBuilder words = new StringBuilder();
        mapping.told()
                .forEach((column, field) ->
                        words.append(column).append(" -> ").append(field).append('\n'));
        list.rows().stream().limit(SHOWN).forEach(row -> {
            words.append("row ").append(row.line()).append('\n');
            read(bringing, row)
                    .forEach(record -> words.append("  ").append(record).append('\n'));
            String why = bringing.unclear().get(row.line());
            if (why != null) {
                words.append("  to be sorted out: ").append(why).append('\n');
            }
        });
        int unclear = bringing.unclear().size();
        words.append(bringing.clear().size())
                .append(" of ")
                .append(list.rows().size())
                .append(" rows are clear");
        words.append(unclear == 0 ? ".\n" : ", " + unclear + " are to be sorted out.\n");
        if (look) {
            return words.append("Nothing was stored; without --look it would be.")
                    .toString();
        }
        return words.append(line.map(edit -> "Stored as edit " + edit.number()
                                + (unclear == 0 ? "." : "; what is to be sorted out stands in the season."))
                        .orElse("All of it is on file already."))
                .toString();
    }
}
