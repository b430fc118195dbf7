package pippinry.larkmoor.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;

/** What the demo puts on paper: the season book, and the tags of this spring. */
final class Paper {

    private static final List<String> TAGS = List.of("pollinations", "seedlots", "pots", "grafts");
    private static final String SHEET = "A4-65";

    private final Call call;
    private final Path program;
    private final Path folder;
    private final List<String> written = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    Paper(Call call, Path program, Path folder) {
        this.call = call;
        this.program = program;
        this.folder = folder;
    }

    /** No is the answer when nothing at all could be written. */
    Answer write() throws Exception {
        Files.createDirectories(folder);
        List<String> words = new ArrayList<>();
        words.add("The demo program is in " + program);
        run(List.of("book", "--program", program.toString(), "--out", folder.toString()), words);
        for (String kind : TAGS) {
            Path file = folder.resolve("tags-" + kind + ".pdf");
            Files.deleteIfExists(file);
            run(
                    List.of(
                            "tags",
                            "--program",
                            program.toString(),
                            "--for",
                            kind,
                            "--sheet",
                            SHEET,
                            "--out",
                            file.toString()),
                    words);
        }
        collect();
        missing.forEach(what -> words.add("Not written: " + what));
        words.add("Look on with: season --program " + program);
        return new Answer(json(), String.join("\n", words), !written.isEmpty());
    }

    private void run(List<String> arguments, List<String> words) throws Exception {
        try {
            Answer answer = call.run(arguments);
            words.add(answer.words().strip());
        } catch (CallRefused e) {
            missing.add(e.getMessage());
        }
    }

    private void collect() throws IOException {
        try (var files = Files.list(folder)) {
            files.sorted().map(Path::toString).forEach(written::add);
        }
    }

    private Map<String, ?> json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("program", program.toString());
        json.put("out", folder.toString());
        json.put("files", List.copyOf(written));
        json.put("missing", List.copyOf(missing));
        return json;
    }
}
