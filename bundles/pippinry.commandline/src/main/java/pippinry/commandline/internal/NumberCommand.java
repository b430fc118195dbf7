package pippinry.commandline.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.model.number.CheckCharacter;
import pippinry.model.number.Reading;

/** Reckons the check character of a number, or says whether the one on a tag is right. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=number",
            Subcommand.SUMMARY + "=the check character of a number, or whether that on a tag is right",
            Subcommand.RECKONS + "=true"
        })
@Command(
        description = {
            "Reckons the check character of a number by ISO/IEC 7064 MOD 37-2, or says whether the one given is right.",
            "Separators and case do not count."
        },
        footer = {"", "Example:", "  pippinry number 26-014-073", "  pippinry number 26-014-073=Y"})
public final class NumberCommand implements Subcommand {

    @Parameters(paramLabel = "NUMBER", description = "A number, with or without = and its check character.")
    private String typed;

    @Activate
    public NumberCommand() {}

    @Override
    public Answer run(Call call) throws CallRefused {
        Reading reading = read();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", reading.number());
        json.put("valid", reading.isValid());
        json.put("check", String.valueOf(reading.check()));
        return new Answer(json, words(reading), reading.isValid());
    }

    private Reading read() throws CallRefused {
        try {
            return Reading.of(typed);
        } catch (IllegalArgumentException e) {
            throw new CallRefused("'" + typed + "' where " + e.getMessage() + " is expected");
        }
    }

    private static String words(Reading reading) {
        if (!reading.isValid()) {
            return reading.number() + " does not have the check "
                    + reading.given().orElseThrow() + ": misread, or another number";
        }
        if (reading.given().isPresent()) {
            return reading + " is right";
        }
        String star = "\nIts check is a star: such a number is never given out.";
        return reading + (reading.check() == CheckCharacter.STAR ? star : "");
    }
}
