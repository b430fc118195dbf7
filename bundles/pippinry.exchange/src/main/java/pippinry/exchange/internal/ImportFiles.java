package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
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
import pippinry.exchange.internal.archive.ArchiveReader;
import pippinry.model.ProgramStore;

/** Brings plain tables or an archive into a program, all or nothing. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=import", Subcommand.SUMMARY + "=brings plain tables or an archive in"})
@Command(
        description = {
            "Brings plain tables (CSV, UTF-8, a header row) into a program. All files are one edit,"
                    + " checked together, so their order is free. If any row is refused, nothing is stored.",
            "An archive of a whole program is brought back with its history into a folder that is empty or not there;"
                    + " into another program come only its records."
        },
        footer = {
            "",
            "Example:",
            "  pippinry import larkmoor genotypes.csv plants.csv scores.csv",
            "  pippinry import larkmoor row-7.csv --as scores --keep-going",
            "  pippinry import larkmoor-again larkmoor.jsonl"
        })
public final class ImportFiles implements Subcommand {

    @Parameters(index = "0", paramLabel = "DIR", description = "The program folder.")
    private Path folder;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "FILE",
            description =
                    "Plain tables, or one archive; a name up to the first dot says which table it is, as in scores.csv.")
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
        Optional<Path> archive = archive();
        if (archive.isPresent() && !call.folders().isProgram(folder)) {
            return new ArchiveImport(call, archive.get(), folder).run();
        }
        try (ProgramStore store = call.folders().open(folder, call.clock())) {
            TableImport tables = new TableImport(call, store, update, keepGoing);
            return archive.isPresent()
                    ? tables.run(archive.get())
                    : tables.run(TableImport.named(files, Optional.ofNullable(table)));
        }
    }

    private Optional<Path> archive() throws CallRefused, IOException {
        for (Path file : files) {
            if (ArchiveReader.isArchive(file)) {
                if (files.size() > 1 || table != null || keepGoing) {
                    throw new CallRefused(
                            file + " is a whole program; it comes in by itself, without --as and --keep-going");
                }
                return Optional.of(file);
            }
        }
        return Optional.empty();
    }
}
