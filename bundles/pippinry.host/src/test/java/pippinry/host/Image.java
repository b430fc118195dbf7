package pippinry.host;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** An image in a folder, made line by line for a test. */
record Image(Path folder) {

    Image feature(String name, String bundles, String extensions) throws IOException {
        return feature(name, bundles, extensions, "");
    }

    /** @param bundles the insides of the arrays and objects, with single for double quotes; as the others */
    Image feature(String name, String bundles, String extensions, String configurations) throws IOException {
        String json =
                """
                {
                  // a comment, as feature files may have
                  'feature-resource-version': '1.0',
                  'id': 'g:features:osgifeature:%s:1',
                  'bundles': [%s],
                  'extensions': {%s},
                  'configurations': {%s}
                }
                """
                        .formatted(name, bundles, extensions, configurations);
        write("features/" + name + ".json", json.replace('\'', '"'));
        return this;
    }

    Image jar(String name) throws IOException {
        write("bundles/" + name, "");
        return this;
    }

    private void write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    Assembly assemble(String feature) {
        return Assembly.of(folder, feature);
    }
}
