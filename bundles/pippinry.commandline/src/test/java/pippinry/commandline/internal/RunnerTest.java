package pippinry.commandline.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.model.StoreFailed;

class RunnerTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Command(description = "Does as it is told.")
    private static final class Obedient implements Subcommand {

        @Option(names = "--how")
        private String how = "well";

        @Override
        public Answer run(Call call) throws Exception {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("third", 1 / 3.0);
            json.put("nothing", Double.NaN);
            json.put("list", List.of(1, "two", true));
            switch (how) {
                case "no" -> {
                    return Answer.no(json, "no");
                }
                case "refused" -> throw new CallRefused("peas.csv line 3, column code: ''");
                case "failed" -> throw new StoreFailed("disk full");
                case "today" -> {
                    return Answer.of(Map.of("today", call.today()), call.today().toString());
                }
                case "program" -> call.program();
                default -> call.out().println("working");
            }
            return Answer.of(json, "yes");
        }
    }

    @ParameterizedTest
    @CsvSource({"well,0", "no,1", "refused,2", "failed,3", "program,2"})
    void theExitCodeTellsHowItEnded(String how, int exit) {
        assertEquals(exit, run("obey", "--how", how));
    }

    @Test
    void jsonStandsAloneOnStandardOutputWithFullPrecision() {
        assertEquals(0, run("obey", "--json"));
        assertEquals(
                "{\n  \"third\" : 0.3333333333333333,\n  \"nothing\" : null,\n  \"list\" : [ 1, \"two\", true ]\n}\n",
                text(out));
        assertEquals("", text(err));
    }

    @Test
    void errorsGoToStandardErrorOnly() {
        run("obey", "--how", "refused", "--json");
        assertEquals("", text(out));
        assertEquals("pippinry: peas.csv line 3, column code: ''\n", text(err));
    }

    @Test
    void anUnknownOptionIsAWrongCall() {
        assertEquals(2, run("obey", "--loudly"));
        assertTrue(text(err).contains("--loudly"));
    }

    @Test
    void anUnknownCommandIsToldTheNearest() {
        assertEquals(2, run("obye"));
        assertTrue(text(err).contains("Is 'obey' meant?"), text(err));
    }

    @Test
    void withoutArgumentsTheCommandsAreListed() {
        assertEquals(0, run());
        assertTrue(text(out).contains("obey  does as it is told"), text(out));
    }

    @Test
    void helpTellsTheOptionsOfTheCommand() {
        assertEquals(0, run("obey", "--help"));
        assertTrue(text(out).contains("--how"), text(out));
    }

    @Test
    void todayIsTheDayGivenElseTheClocks() {
        run("obey", "--how", "today", "--on", "2025-05-14");
        run("obey", "--how", "today");
        assertEquals("2025-05-14\n2026-03-27\n", text(out));
    }

    private int run(String... arguments) {
        Surroundings around = new Surroundings(
                Path.of("."),
                InputStream.nullInputStream(),
                print(out),
                print(err),
                false,
                Clock.fixed(Instant.parse("2026-03-27T10:00:00Z"), ZoneOffset.UTC),
                "IN");
        return new Runner(new Known(Map.of("obey", Obedient::new)), new NoFolders(), around)
                .run(Arrays.asList(arguments));
    }

    private static PrintStream print(ByteArrayOutputStream to) {
        return new PrintStream(to, true, StandardCharsets.UTF_8);
    }

    private static String text(ByteArrayOutputStream of) {
        return of.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    private record Known(Map<String, Supplier<Subcommand>> makers) implements Commands {

        @Override
        public SortedMap<String, String> summaries() {
            SortedMap<String, String> summaries = new TreeMap<>();
            makers.keySet().forEach(name -> summaries.put(name, "does as it is told"));
            return summaries;
        }

        @Override
        public boolean reckons(String name) {
            return false;
        }

        @Override
        public Optional<Lease> open(String name) {
            return Optional.ofNullable(makers.get(name)).map(maker -> new Fresh(maker.get()));
        }
    }

    private record Fresh(Subcommand command) implements Commands.Lease {

        @Override
        public boolean reckons() {
            return false;
        }

        @Override
        public void close() {}
    }
}
