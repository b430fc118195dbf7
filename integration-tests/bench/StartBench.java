import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Measures how long the program takes to start, against a yardstick taken in the same run: a Java process that prints
 * one line, and one that starts an empty framework. Rounds go through all commands in turn, so that a busy moment of
 * the machine hits all alike; medians are compared.
 *
 * <p>{@code java StartBench.java IMAGE PROGRAM [ROUNDS]}; the program is Larkmoor
 */
final class StartBench {

    private static final double ALLOWED = 3.0;
    private static final int OPENING_ALLOWED = 1_000;

    private StartBench() {}

    public static void main(String[] args) throws Exception {
        Path image = Path.of(args[0]).toAbsolutePath().normalize();
        int rounds = args.length > 2 ? Integer.parseInt(args[2]) : 15;
        Path work = Files.createTempDirectory("pippinry-bench-");
        try {
            machine();
            report(measure(commands(image, compiled(image, work), work, Path.of(args[1])), rounds));
        } finally {
            remove(work);
        }
    }

    private static void machine() throws IOException {
        Path cpu = Path.of("/proc/cpuinfo");
        String model = Files.isReadable(cpu)
                ? Files.readAllLines(cpu).stream()
                        .filter(line -> line.startsWith("model name"))
                        .map(line -> line.substring(line.indexOf(':') + 1).strip())
                        .findFirst()
                        .orElse("?")
                : System.getProperty("os.arch");
        double load = java.lang.management.ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        System.out.printf("machine      %s, %d processors, load %.2f, %s, Java %s%n",
                model, Runtime.getRuntime().availableProcessors(), load,
                System.getProperty("os.name"), System.getProperty("java.runtime.version"));
    }

    private static String compiled(Path image, Path work) throws IOException {
        String classPath = String.join(File.pathSeparator, jars(image.resolve("lib")));
        Path here = Path.of(System.getProperty("pippinry.bench", "integration-tests/bench"));
        int result = ToolProvider.findFirst("javac").orElseThrow().run(System.out, System.err,
                "-d", work.toString(), "-cp", classPath,
                here.resolve("OneLine.java").toString(), here.resolve("EmptyFramework.java").toString());
        if (result != 0) {
            throw new IOException("The yardstick does not compile");
        }
        return work.toString();
    }

    private static List<String> jars(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(Path::toString).filter(name -> name.endsWith(".jar")).toList();
        }
    }

    private static Map<String, List<String>> commands(Path image, String classes, Path work, Path program) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String framework = jars(image.resolve("lib")).stream()
                .filter(jar -> jar.contains("felix.framework"))
                .findFirst()
                .orElseThrow();
        Map<String, List<String>> commands = new LinkedHashMap<>();
        commands.put("one line", List.of(java, "-cp", classes, "OneLine"));
        commands.put("empty framework", List.of(java, "-cp", classes + File.pathSeparator + framework,
                "EmptyFramework", work.resolve("cache").toString()));
        String pippinry = image.resolve("bin/pippinry").toString();
        commands.put("number", List.of("sh", pippinry, "number", "26-014-073"));
        commands.put("help", List.of("sh", pippinry, "--help"));
        commands.put("who", List.of("sh", pippinry, "who", "--program", program.toString(), "99-999-999"));
        return commands;
    }

    private static Map<String, double[]> measure(Map<String, List<String>> commands, int rounds) throws Exception {
        Map<String, double[]> times = new LinkedHashMap<>();
        for (Map.Entry<String, List<String>> command : commands.entrySet()) {
            times.put(command.getKey(), new double[rounds]);
            run(command.getValue()); // the first start fills caches and may write the class archive
        }
        for (int round = 0; round < rounds; round++) {
            for (Map.Entry<String, List<String>> command : commands.entrySet()) {
                times.get(command.getKey())[round] = run(command.getValue());
            }
        }
        return times;
    }

    /** Milliseconds from call to end. */
    private static double run(List<String> command) throws Exception {
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        int exit = process.waitFor();
        double millis = (System.nanoTime() - start) / 1e6;
        if (exit > 1) {
            throw new IOException("exit code " + exit + " from " + command);
        }
        return millis;
    }

    private static void report(Map<String, double[]> times) {
        Map<String, Double> medians = new LinkedHashMap<>();
        times.forEach((name, millis) -> {
            Arrays.sort(millis);
            medians.put(name, millis[millis.length / 2]);
            System.out.printf("%-16s median %5.0f ms   fastest %5.0f ms%n", name, millis[millis.length / 2], millis[0]);
        });
        double one = medians.get("one line");
        double framework = medians.get("empty framework");
        double number = medians.get("number");
        System.out.printf("number / (one line + empty framework)                    = %.2f (allowed %.1f)%n",
                number / (one + framework), ALLOWED);
        System.out.printf("the same with Java's own start counted once, the strictest = %.2f%n", number / framework);
        double opening = medians.get("who") - medians.get("help");
        System.out.printf("opening Larkmoor (who on no number, less a whole start)  = %.0f ms (allowed %d)%n",
                opening, OPENING_ALLOWED);
        if (opening > OPENING_ALLOWED || number > ALLOWED * (one + framework)) {
            System.exit(1);
        }
    }

    private static void remove(Path folder) throws IOException {
        List<Path> paths = new ArrayList<>();
        try (Stream<Path> walk = Files.walk(folder)) {
            walk.forEach(paths::add);
        }
        for (int i = paths.size() - 1; i >= 0; i--) {
            Files.delete(paths.get(i));
        }
    }
}
