package pippinry.crossing.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.statistics.proportions.KnownShare;
import pippinry.statistics.proportions.TrialsNeeded;

/** Seedlings needed for at least so many of a wanted share. */
@Command(
        name = "howmany",
        description = "Says how many seedlings give a fair chance of the wanted ones.",
        footer = {
            "",
            "Example: one seedling in eight is wanted, at least two of them, 19 times in 20:",
            "  pippinry howmany --share 1/8 --sure 0.95 --atleast 2"
        })
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=howmany",
            Subcommand.RECKONS + "=true",
            Subcommand.SUMMARY + "=how many seedlings for a fair chance of the wanted ones"
        })
public final class HowManyCommand implements Subcommand {

    @Option(
            names = "--share",
            required = true,
            paramLabel = "SHARE",
            description = "share of the seedlings that is wanted, such as 0.125 or 1/8")
    String share;

    @Option(
            names = "--sure",
            required = true,
            paramLabel = "P",
            description = "how sure you want to be, above 0 and below 1, such as 0.95")
    String sure;

    @Option(
            names = "--atleast",
            defaultValue = "1",
            paramLabel = "K",
            description = "how many of the wanted ones you need (default 1)")
    String atLeast;

    @Override
    public Answer run(Call call) throws CallRefused {
        double wanted = Numbers.share("--share", share);
        double certainty = Numbers.inside("--sure", sure);
        long least = Numbers.whole("--atleast", atLeast, 1);
        OptionalLong needed = TrialsNeeded.atLeast(least, new KnownShare(wanted), certainty);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("seedlings", needed.isPresent() ? needed.getAsLong() : null);
        if (needed.isEmpty()) {
            String why = wanted == 0
                    ? "None of the seedlings can be what is wanted, so no number is enough."
                    : "No number of seedlings that could be raised is enough.";
            json.put("reason", why);
            return Answer.no(json, why);
        }
        return Answer.of(
                json,
                Words.say(
                        "%d seedlings: then at least %d of the wanted ones with a chance of %s or more.",
                        needed.getAsLong(), least, sure));
    }
}
