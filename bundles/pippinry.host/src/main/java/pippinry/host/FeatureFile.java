package pippinry.host;

import jakarta.json.Json;
import jakarta.json.JsonObject;
import jakarta.json.JsonReader;
import jakarta.json.JsonString;
import jakarta.json.JsonValue;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.feature.Feature;
import org.osgi.service.feature.FeatureBundle;
import org.osgi.service.feature.FeatureConfiguration;
import org.osgi.service.feature.FeatureExtension;

/**
 * One feature file in our terms. Two extensions are named as the OSGi Feature Launcher standard names them,
 * {@code framework-launching-properties} and {@code bundle-start-levels}. Two are ours: {@code builds-on} lists the features
 * that this one needs; a feature with {@code starts-first} (the text is its reason) is started and asked before those
 * without, which often saves starting them.
 */
record FeatureFile(Feature feature) {

    private static final String BUILDS_ON = "builds-on";
    private static final String SETTINGS = "framework-launching-properties";
    private static final String START_LEVELS = "bundle-start-levels";
    private static final String STARTS_FIRST = "starts-first";

    List<String> buildsOn() {
        FeatureExtension extension = feature.getExtensions().get(BUILDS_ON);
        return extension == null ? List.of() : extension.getText();
    }

    List<Part> parts(Repository repository) {
        int usual = extension(START_LEVELS).getInt("defaultBundleStartLevel", 1);
        boolean first = feature.getExtensions().containsKey(STARTS_FIRST);
        return feature.getBundles().stream()
                .map(bundle -> part(bundle, repository, usual, first))
                .toList();
    }

    private static Part part(FeatureBundle bundle, Repository repository, int usual, boolean first) {
        Object own = bundle.getMetadata().get("bundleStartLevel");
        int level = own instanceof Number number ? number.intValue() : usual;
        return new Part(bundle.getID().getArtifactId(), repository.jar(bundle.getID()), level, first);
    }

    Map<String, String> settings() {
        Map<String, String> settings = new LinkedHashMap<>();
        extension(SETTINGS).forEach((key, value) -> settings.put(key, text(value)));
        return settings;
    }

    Map<String, Map<String, Object>> configurations() {
        Map<String, Map<String, Object>> configurations = new LinkedHashMap<>();
        for (FeatureConfiguration configuration : feature.getConfigurations().values()) {
            configurations.put(configuration.getPid(), configuration.getValues());
        }
        return configurations;
    }

    private JsonObject extension(String name) {
        FeatureExtension extension = feature.getExtensions().get(name);
        if (extension == null) {
            return JsonValue.EMPTY_JSON_OBJECT;
        }
        try (JsonReader reader = Json.createReader(new StringReader(extension.getJSON()))) {
            return reader.readObject();
        }
    }

    private static String text(JsonValue value) {
        return value instanceof JsonString string ? string.getString() : value.toString();
    }
}
