package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.exchange.internal.passport.Collection;
import pippinry.exchange.internal.tables.TableExport;
import pippinry.model.Program;
import pippinry.model.ProgramStore;

/**
 * Passport data of what lives here.
 *
 * @param withSite whether it tells where the land lies
 */
record PassportOut(boolean withSite) implements Outgoing {

    @Override
    public Answer write(Call call, ProgramStore store, Program program, Destination out)
            throws IOException, CallRefused {
        Path file = out.file("passport.csv");
        List<List<String>> rows = new Collection(program, withSite).rows();
        Destination.write(file, part -> TableExport.write(part, Collection.header(), rows));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", file.toString());
        json.put("accessions", rows.size());
        json.put("with_site", withSite);
        String site = withSite
                ? "It tells where your land lies."
                : "It does not tell where your land lies; --with-site would.";
        return Answer.of(json, "Passports of " + rows.size() + " genotypes are in " + file + ". " + site);
    }
}
