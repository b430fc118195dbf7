package pippinry.host;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a feature and all that it builds on come to.
 *
 * @param parts the jars, those that others build on first
 * @param settings properties for the framework
 * @param configurations for the Configuration Admin, by persistent identity ({@code factory~name} for a factory's)
 */
public record Assembly(
        List<Part> parts, Map<String, String> settings, Map<String, Map<String, Object>> configurations) {

    public Assembly {
        parts = List.copyOf(parts);
        settings = Map.copyOf(settings);
        configurations = Map.copyOf(configurations);
    }

    /** The feature of that name in an image, with everything that it builds on. */
    public static Assembly of(Path image, String feature) {
        return new FeatureFolder(image.toAbsolutePath().normalize()).assemble(feature);
    }

    /** The same without some bundles; a name that is not there is refused, since it is most likely misspelt. */
    public Assembly without(Set<String> names) {
        Set<String> unknown = new TreeSet<>(names);
        parts.forEach(part -> unknown.remove(part.name()));
        if (!unknown.isEmpty()) {
            throw CannotStart.wrongCall("--without names no bundle of this feature: " + String.join(", ", unknown));
        }
        List<Part> kept =
                parts.stream().filter(part -> !names.contains(part.name())).toList();
        return new Assembly(kept, settings, configurations);
    }

    /** The same with some more jars, which start last. */
    public Assembly with(List<Path> jars) {
        List<Part> more = new ArrayList<>(parts);
        for (Path jar : jars) {
            if (!Files.isRegularFile(jar)) {
                throw CannotStart.wrongCall("--with names no file: " + jar);
            }
            more.add(new Part(jar.getFileName().toString(), jar.toAbsolutePath(), lastLevel(), false));
        }
        return new Assembly(more, settings, configurations);
    }

    /** Only what is tried first, with the settings of all. */
    public Assembly first() {
        return new Assembly(parts.stream().filter(Part::first).toList(), settings, configurations);
    }

    /** What {@link #first()} leaves. */
    List<Part> rest() {
        return parts.stream().filter(part -> !part.first()).toList();
    }

    int lastLevel() {
        return parts.stream().mapToInt(Part::startLevel).max().orElse(1);
    }
}
