package pippinry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.osgi.framework.Bundle;
import org.osgi.framework.wiring.BundleRevision;

/** The image starts whole from its feature files, and without any one of the bundles that a person may leave out. */
class StartedImageIT {

    @Test
    void everyBundleIsActiveAndNoComponentWaits() throws Exception {
        try (RunningProgram program = RunningProgram.of("apple")) {
            assertEquals(List.of(), idle(program));
            assertEquals(List.of(), program.ask("waiting"));
        }
    }

    @Test
    void whatStartsFirstStandsAlone() throws Exception {
        try (RunningProgram program = RunningProgram.firstOf("apple")) {
            assertEquals(List.of(), idle(program));
            assertEquals(List.of(), named(program, "pippinry.store").toList());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"pippinry.pedigree", "pippinry.labels", "pippinry.traits.apple"})
    void theRestRunsWhenOneIsLeftOut(String name) throws Exception {
        try (RunningProgram program = RunningProgram.without("apple", Set.of(name))) {
            assertEquals(List.of(), idle(program));
            assertEquals(List.of(), program.ask("waiting"));
            assertEquals(List.of(), named(program, name).toList());
        }
    }

    private static List<Bundle> idle(RunningProgram program) {
        return program.bundles().stream()
                .filter(bundle -> bundle.getState() != Bundle.ACTIVE && !isFragment(bundle))
                .toList();
    }

    private static boolean isFragment(Bundle bundle) {
        return (bundle.adapt(BundleRevision.class).getTypes() & BundleRevision.TYPE_FRAGMENT) != 0;
    }

    private static Stream<Bundle> named(RunningProgram program, String name) {
        return program.bundles().stream()
                .filter(bundle -> bundle.getSymbolicName().equals(name));
    }
}
