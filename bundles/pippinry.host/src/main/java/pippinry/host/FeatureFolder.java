package pippinry.host;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.osgi.service.feature.Feature;

/** The feature files of an image; a feature is put together with all that it builds on. */
final class FeatureFolder {

    private final Path image;
    private final FeatureReader reader = new FeatureReader();

    FeatureFolder(Path image) {
        this.image = image;
    }

    Assembly assemble(String feature) {
        Map<String, FeatureFile> found = new LinkedHashMap<>();
        collect(feature, new LinkedHashSet<>(), found);
        List<Part> parts = new ArrayList<>();
        Map<String, String> settings = new LinkedHashMap<>();
        Map<String, Map<String, Object>> configurations = new LinkedHashMap<>();
        for (FeatureFile file : found.values()) {
            parts.addAll(file.parts(new Repository(image.resolve("bundles"))));
            settings.putAll(file.settings());
            configurations.putAll(file.configurations());
        }
        return new Assembly(parts, settings, configurations);
    }

    private void collect(String name, Set<String> above, Map<String, FeatureFile> found) {
        if (found.containsKey(name)) {
            return;
        }
        if (!above.add(name)) {
            throw CannotStart.broken("Features build on each other in a ring: " + String.join(" -> ", above));
        }
        FeatureFile file = new FeatureFile(read(name));
        file.buildsOn().forEach(below -> collect(below, above, found));
        above.remove(name);
        found.put(name, file);
    }

    private Feature read(String name) {
        Path file = folder().resolve(name + ".json");
        if (!Files.isRegularFile(file)) {
            throw CannotStart.wrongCall("No feature '" + name + "' in " + folder() + "; there are: " + names());
        }
        return reader.read(file);
    }

    private String names() {
        try (Stream<Path> files = Files.list(folder())) {
            return String.join(
                    ", ",
                    files.map(file -> file.getFileName().toString())
                            .filter(name -> name.endsWith(".json"))
                            .map(name -> name.substring(0, name.length() - ".json".length()))
                            .sorted()
                            .toList());
        } catch (IOException e) {
            return "none (" + e.getMessage() + ")";
        }
    }

    private Path folder() {
        return image.resolve("features");
    }
}
