package pippinry.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CallTest {

    @Test
    void theLaunchersOptionsEndAtTheFirstWordOfTheProgram() {
        Call call = parse("--feature", "pear", "season", "--feature", "x");
        assertEquals("pear", call.feature());
        assertEquals(List.of("season", "--feature", "x"), call.args());
    }

    @Test
    void withoutOptionsTheUsualFeatureIsStartedWhole() {
        Call call = parse("season");
        assertEquals("apple", call.feature());
        assertEquals(Set.of(), call.without());
        assertEquals(List.of(), call.with());
    }

    @Test
    void theEnvironmentNamesTheFeatureUnlessTheCallDoes() {
        Map<String, String> environment = Map.of("PIPPINRY_FEATURE", "plum");
        assertEquals("plum", Call.parse(new String[] {}, environment).feature());
        assertEquals(
                "pear",
                Call.parse(new String[] {"--feature", "pear"}, environment).feature());
    }

    @Test
    void bundlesLeftOutAddUp() {
        Map<String, String> environment = Map.of("PIPPINRY_WITHOUT", "a, b,");
        Call call = Call.parse(new String[] {"--without", "c", "--without", "d,e"}, environment);
        assertEquals(Set.of("a", "b", "c", "d", "e"), call.without());
    }

    @Test
    void theImageIsAnAbsoluteFolder() {
        assertEquals(
                Path.of("some").toAbsolutePath(),
                parse("--image", "there/../some").image());
    }

    @Test
    void anOptionWithoutItsValueIsAWrongCall() {
        CannotStart refused = assertThrows(CannotStart.class, () -> parse("--with", "a.jar", "--without"));
        assertEquals(2, refused.exit());
        assertEquals("--without needs a value after it", refused.getMessage());
    }

    private static Call parse(String... args) {
        return Call.parse(args, Map.of());
    }
}
