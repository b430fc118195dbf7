package pippinry.nursery.internal;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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
import pippinry.commandline.Subcommand;
import pippinry.model.ProgramStore;
import pippinry.model.record.Done;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.act.NotPossible;
import pippinry.nursery.internal.act.Visiting;

/** Puts a visit to a branch on file. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=visit", Subcommand.SUMMARY + "=what was done at a tagged branch, and losses"})
@Command(
        description =
                "Notes what was done at a tagged branch: emasculated, bagged, pollinated, bag_off, set, june, harvest"
                        + " or lost. Lost with a number is so many flowers or fruits, without one the branch itself.",
        footer = {
            "",
            "Examples:",
            "  pippinry visit --program larkmoor 26-014/3 pollinated 20 --pollen P26-01 --weather \"sun, 18 °C\"",
            "  pippinry visit --program larkmoor 26-014/3 lost --cause frost"
        })
public final class VisitCommand implements Subcommand {

    @Parameters(index = "0", paramLabel = "TAG", description = "The branch, with or without its check.")
    private String tag;

    @Parameters(index = "1", paramLabel = "DID", description = "What was done.")
    private String did;

    @Parameters(index = "2", paramLabel = "COUNT", arity = "0..1", description = "Flowers or fruits.")
    private Optional<Integer> count = Optional.empty();

    @Option(names = "--pollen", paramLabel = "LOT", description = "The pollen lot that was used.")
    private Optional<String> pollen = Optional.empty();

    @Option(
            names = "--at",
            paramLabel = "HH:MM",
            description = "The minute, from which the pace of a hand is reckoned.")
    private Optional<LocalTime> at = Optional.empty();

    @Option(names = "--hand", paramLabel = "INITIALS", description = "Who did it; you, if left out.")
    private Optional<String> hand = Optional.empty();

    @Option(names = "--weather", paramLabel = "WORDS", defaultValue = "", description = "In a few words.")
    private String weather;

    @Option(names = "--cause", paramLabel = "WORDS", defaultValue = "", description = "Of a loss: frost, wind ...")
    private String cause;

    @Activate
    public VisitCommand() {}

    @Override
    public Answer run(Call call) throws Exception {
        try {
            ProgramStore store = call.store();
            Visiting visit = new Visiting(
                    tag,
                    done(),
                    count.map(OptionalInt::of).orElse(OptionalInt.empty()),
                    pollen.map(Code::of),
                    at.map(minute -> PartialDate.of(call.today().atTime(minute)))
                            .orElseGet(() -> PartialDate.of(call.today())),
                    hand.orElse(call.author()),
                    weather,
                    cause);
            store.apply(visit.in(store.now(), call.author()));
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("tag", tag);
            json.put("did", visit.did().word());
            json.put("time", visit.time().toString());
            json.put("count", count.orElse(null));
            return Answer.of(
                    json,
                    tag + " " + visit.did().word() + count.map(n -> " " + n).orElse(""));
        } catch (NotPossible e) {
            return Answer.no(Map.of("reason", e.getMessage()), e.getMessage());
        } catch (IllegalArgumentException e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private Done done() {
        return Arrays.stream(Done.values())
                .filter(done -> done.word().equalsIgnoreCase(did.replace('-', '_')))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(did + ": expected one of "
                        + Arrays.stream(Done.values()).map(Done::word).collect(Collectors.joining(", "))));
    }
}
