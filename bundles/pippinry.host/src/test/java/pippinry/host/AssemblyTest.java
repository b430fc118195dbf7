package pippinry.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssemblyTest {

    @TempDir
    Path folder;

    private Image image;

    @BeforeEach
    void makeAnImageOfThreeFeatures() throws IOException {
        image = new Image(folder)
                .jar("g.scr-2.jar")
                .jar("g.model-1.jar")
                .jar("g.apple-1.jar")
                .feature(
                        "base",
                        "{'id': 'g:scr:2', 'bundleStartLevel': 2}",
                        """
                        'starts-first': {'kind': 'optional', 'text': ['all need it']},
                        'framework-launching-properties': {'kind': 'mandatory', 'json': {'level': 'base', 'number': 3}}
                        """)
                .feature(
                        "records",
                        "{'id': 'g:model:1'}",
                        """
                        'builds-on': {'kind': 'mandatory', 'text': ['base']},
                        'bundle-start-levels': {'kind': 'mandatory', 'json': {'defaultBundleStartLevel': 3}}
                        """,
                        "'the.store': {'pages:Integer': 512, 'name': 'x'}, 'pack~apple': {'code': 'apple'}")
                .feature(
                        "apple",
                        "{'id': 'g:apple:1'}",
                        """
                        'builds-on': {'kind': 'mandatory', 'text': ['records', 'base']},
                        'framework-launching-properties': {'kind': 'mandatory', 'json': {'level': 'apple'}}
                        """);
    }

    @Test
    void aFeatureComesAfterThoseThatItBuildsOnEachOnce() {
        assertEquals(List.of("scr", "model", "apple"), names(image.assemble("apple")));
    }

    @Test
    void startLevelsAreTheBundlesOwnElseTheFeaturesElseTheFirst() {
        assertEquals(
                List.of(2, 3, 1),
                image.assemble("apple").parts().stream().map(Part::startLevel).toList());
    }

    @Test
    void theFeatureOnTopHasTheLastWordOnSettings() {
        assertEquals(
                Map.of("level", "apple", "number", "3"), image.assemble("apple").settings());
    }

    @Test
    void configurationsKeepTheirTypes() {
        Map<String, Map<String, Object>> configurations =
                image.assemble("apple").configurations();
        assertEquals(Map.of("pages", 512, "name", "x"), configurations.get("the.store"));
        assertEquals(Map.of("code", "apple"), configurations.get("pack~apple"));
    }

    @Test
    void whatStartsFirstAndTheRestAreTheWhole() {
        Assembly whole = image.assemble("apple");
        assertEquals(List.of("scr"), names(whole.first()));
        assertEquals(
                List.of("model", "apple"), whole.rest().stream().map(Part::name).toList());
    }

    @Test
    void aBundleMayBeLeftOut() {
        assertEquals(List.of("scr", "apple"), names(image.assemble("apple").without(Set.of("model"))));
    }

    @Test
    void leavingOutWhatIsNotThereIsAWrongCall() {
        Assembly whole = image.assemble("apple");
        CannotStart refused = assertThrows(CannotStart.class, () -> whole.without(Set.of("modell")));
        assertEquals(2, refused.exit());
        assertTrue(refused.getMessage().contains("modell"));
    }

    @Test
    void aJarOfOnesOwnStartsLast() {
        Path jar = folder.resolve("bundles/g.model-1.jar");
        Part own = image.assemble("apple").with(List.of(jar)).parts().get(3);
        assertEquals(new Part("g.model-1.jar", jar.toAbsolutePath(), 3, false), own);
    }

    @Test
    void aJarThatIsNotThereIsAWrongCall() {
        Assembly whole = image.assemble("apple");
        assertThrows(CannotStart.class, () -> whole.with(List.of(folder.resolve("none.jar"))));
    }

    @Test
    void anUnknownFeatureIsAWrongCallThatListsTheOthers() {
        CannotStart refused = assertThrows(CannotStart.class, () -> image.assemble("quince"));
        assertEquals(2, refused.exit());
        assertTrue(refused.getMessage().contains("apple, base, records"), refused.getMessage());
    }

    @Test
    void aRingOfFeaturesIsRefused() throws IOException {
        image.feature("hen", "", "'builds-on': {'kind': 'mandatory', 'text': ['egg']}")
                .feature("egg", "", "'builds-on': {'kind': 'mandatory', 'text': ['hen']}");
        CannotStart refused = assertThrows(CannotStart.class, () -> image.assemble("hen"));
        assertTrue(refused.getMessage().contains("hen -> egg"), refused.getMessage());
    }

    @Test
    void aJarMissingFromTheImageIsNamed() throws IOException {
        image.feature("broken", "{'id': 'g:lost:1'}", "");
        CannotStart refused = assertThrows(CannotStart.class, () -> image.assemble("broken"));
        assertEquals(3, refused.exit());
        assertTrue(refused.getMessage().contains("g.lost-1.jar"), refused.getMessage());
    }

    @Test
    void aFeatureFileThatIsNotJsonIsNamed() throws IOException {
        image.feature("broken", "{'id'}", "");
        CannotStart refused = assertThrows(CannotStart.class, () -> image.assemble("broken"));
        assertEquals(3, refused.exit());
        assertTrue(refused.getMessage().contains("broken.json"), refused.getMessage());
    }

    private static List<String> names(Assembly assembly) {
        return assembly.parts().stream().map(Part::name).toList();
    }
}
