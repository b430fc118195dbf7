package pippinry;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The start script of an image, called as a person calls it, in a process of its own. */
final class CalledProgram {

    /** What came of a call. */
    record Answer(int exit, String out, String err) {

        List<String> lines() {
            return out.lines().toList();
        }
    }

    private static final long PATIENCE_SECONDS = 60;

    private final ProcessBuilder call;

    private CalledProgram(ProcessBuilder call) {
        this.call = call;
    }

    static CalledProgram of(Path script, String... args) {
        List<String> words = new ArrayList<>(List.of("sh", script.toString()));
        words.addAll(List.of(args));
        ProcessBuilder call = new ProcessBuilder(words);
        call.environment().put("JAVA_HOME", System.getProperty("java.home"));
        call.environment().keySet().removeIf(name -> name.startsWith("PIPPINRY_"));
        return new CalledProgram(call);
    }

    CalledProgram in(Path folder) {
        call.directory(folder.toFile());
        return this;
    }

    CalledProgram with(String variable, String value) {
        call.environment().put(variable, value);
        return this;
    }

    Process start() throws IOException {
        return call.start();
    }

    Answer answer() throws IOException, InterruptedException {
        return answer("");
    }

    Answer answer(String input) throws IOException, InterruptedException {
        Process process = start();
        process.getOutputStream().write(input.getBytes(StandardCharsets.UTF_8));
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("Still running: " + call.command());
        }
        return new Answer(process.exitValue(), out, err);
    }
}
