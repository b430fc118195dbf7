package pippinry.exchange.internal;

import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.Subcommand;
import pippinry.model.ProgramStore;

/** Brings plain tables into a program, all or nothing. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=import", Subcommand.SUMMARY + "=brings plain tables in"})
@Command(
        description = {
            "Brings plain tables (CSV, UTF-8, a header row) into a program. All files are one edit,"
                    + " checked together, so their order is free. If any row is refused, nothing is stored."
        },
        footer = {
            "",
            "Example:",
            "  pippinry import larkmoor genotypes.csv plants.csv scores.csv",
            "  pippinry import larkmoor row-7.csv --as scores --keep-going"
        })
public final class ImportFiles implements Subcommand {

    @Parameters(index = "0", paramLabel = "DIR", description = "The program folder.")
    private Path folder;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "FILE",
            description = "Plain tables; the name up to the first dot says which table, as in scores.csv.")
    private List<Path> files;

    @Option(names = "--as", paramLabel = "TABLE", description = "Which table the files are, whatever they are called.")
    private String table;

    @Option(names = "--update", description = "Let a row change the record that is on file under its key.")
    private boolean update;

    @Option(
            names = "--keep-going",
            description = "Store the rows that can be, and write the others beside their file as TABLE.refused.csv.")
    private boolean keepGoing;

    @Activate
    public ImportFiles() {}

    @Override
    public Answer run(Call call) throws Exception {
        try (ProgramStore store = call.folders().open(folder, call.clock())) {
            return new TableImport(call, store, update, keepGoing).run(TableImport.named(files, table));
        }
    }
}
