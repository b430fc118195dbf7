import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pippinry.pedigree.internal.kinship.Kinship;
import pippinry.pedigree.internal.kinship.PedigreeDraft;
import pippinry.pedigree.internal.kinship.PedigreeGraph;
import pippinry.pedigree.internal.kinship.RelationshipInverse;

/**
 * Inbreeding and the sparse inverse of the relationship matrix, ours beside a plain R script on the same pedigree in the same
 * run; results are compared. The R script works among the parents alone, as ours does.
 *
 * <p>{@code java -cp JAR PedigreeBench.java FOLDER PLANTS FAMILY}
 */
final class PedigreeBench {

    private static final String READ = "read and index";
    private static final String INBREEDING = "inbreeding";
    private static final String INVERSE = "sparse inverse";
    private static final int WARM = 5;

    private final Path folder;
    private final String tag;
    private final int plants;
    private final int family;

    private PedigreeBench(Path folder, int plants, int family) {
        this.folder = folder;
        this.plants = plants;
        this.family = family;
        this.tag = family == 20 ? "" + plants : plants + "f" + family;
    }

    public static void main(String[] args) throws Exception {
        new PedigreeBench(Path.of(args[0]), Integer.parseInt(args[1]), Integer.parseInt(args[2])).run();
    }

    private void run() throws Exception {
        double load = java.lang.management.ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        System.out.printf("%n%,d plants in families of about %d; %d processors, load %.1f, Java %s%n",
                plants, family, Runtime.getRuntime().availableProcessors(), load, System.getProperty("java.version"));
        boolean fits = bytesOfR() < availableBytes();
        boolean r = fits && hasR();
        Path file = folder.resolve("pedigree-" + tag + ".csv");
        if (r) {
            ask("bench-make-data.R", "" + plants, "1", "" + family);
        } else {
            write(file);
        }
        Map<String, Double> first = new LinkedHashMap<>();
        String ours = ours(file, first);
        Map<String, Double> warm = new LinkedHashMap<>(first);
        for (int again = 0; again < WARM; again++) {
            Map<String, Double> times = new LinkedHashMap<>();
            ours(file, times);
            times.forEach((step, seconds) -> warm.merge(step, seconds, Math::min));
        }
        String answer = r ? ask("bench-ainverse.R", tag) : "";
        System.out.printf("%-16s %10s %10s %10s %8s%n", "seconds", "first run", "warm", "R", "R/first");
        first.forEach((step, seconds) -> row(step, seconds, warm.get(step), secondsOfR(answer, step)));
        System.out.println("ours: " + ours + ", peak memory " + peak());
        System.out.println(r ? "R:    " + lastLine(answer) : !fits
                ? "R:    not asked; its dense matrix among the parents (%,d MB) would not fit".formatted(bytesOfR() >> 20)
                : "R:    not here (Rscript with package Matrix); our side alone");
    }

    private static void row(String step, double first, double warm, double r) {
        System.out.printf("%-16s %10.3f %10.3f %10s %8s%n", step, first, warm,
                Double.isNaN(r) ? "-" : "%.3f".formatted(r), Double.isNaN(r) ? "-" : "%.1f".formatted(r / first));
    }

    private String ours(Path file, Map<String, Double> times) {
        PedigreeGraph graph = time(READ, times, () -> read(file));
        Kinship kinship = time(INBREEDING, times, () -> Kinship.of(graph));
        RelationshipInverse inverse = time(INVERSE, times, () -> RelationshipInverse.of(kinship));
        double sum = 0;
        double most = 0;
        for (int who = 0; who < plants; who++) {
            sum += kinship.inbreeding(who);
            most = Math.max(most, kinship.inbreeding(who));
        }
        return "mean F %.12g max F %.4g elements of the inverse %d log det A %.14g".formatted(
                sum / plants, most, inverse.elements(), kinship.logDeterminant());
    }

    private static <T> T time(String step, Map<String, Double> times, Supplier<T> work) {
        long start = System.nanoTime();
        T result = work.get();
        times.put(step, (System.nanoTime() - start) / 1e9);
        return result;
    }

    private static PedigreeGraph read(Path file) {
        PedigreeDraft draft = new PedigreeDraft();
        Map<String, Integer> numbers = new HashMap<>();
        try (BufferedReader in = Files.newBufferedReader(file)) {
            in.readLine();
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] cells = line.split(",", -1);
                int who = number(cells[0], numbers, draft);
                if (!cells[1].isEmpty()) draft.seedParent(who, number(cells[1], numbers, draft));
                if (!cells[2].isEmpty()) draft.pollenParent(who, number(cells[2], numbers, draft));
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return draft.build();
    }

    private static int number(String code, Map<String, Integer> numbers, PedigreeDraft draft) {
        return numbers.computeIfAbsent(code, fresh -> draft.add());
    }

    private boolean hasR() {
        try {
            return new ProcessBuilder("Rscript", "-e", "library(Matrix)")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start()
                    .waitFor() == 0;
        } catch (IOException | InterruptedException none) {
            return false;
        }
    }

    private String ask(String... script) throws Exception {
        List<String> command = new ArrayList<>(List.of("Rscript"));
        command.addAll(List.of(script));
        Process process = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
        String answer = new String(process.getInputStream().readAllBytes());
        return process.waitFor() == 0 ? answer : "R failed: " + answer;
    }

    /** Its matrix among the parents, about six parents for ten families, and half as much again while it is filled. */
    private long bytesOfR() {
        double parents = 0.6 * plants / family;
        return (long) (parents * parents * Double.BYTES * 1.5);
    }

    private static long availableBytes() throws IOException {
        Path memory = Path.of("/proc/meminfo");
        if (!Files.isReadable(memory)) return 4L << 30;
        return Files.readAllLines(memory).stream()
                .filter(line -> line.startsWith("MemAvailable"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) * 1024)
                .findFirst()
                .orElse(4L << 30);
    }

    private static double secondsOfR(String answer, String step) {
        String name = step.equals(INVERSE) ? "sparse A-inverse" : step;
        Matcher found = Pattern.compile("(?m)^" + name + ".*?([0-9.]+) s$").matcher(answer);
        return found.find() ? Double.parseDouble(found.group(1)) : Double.NaN;
    }

    private static String lastLine(String answer) {
        String[] lines = answer.strip().split("\n");
        return lines[lines.length - 1];
    }

    private static String peak() throws IOException {
        Path status = Path.of("/proc/self/status");
        if (!Files.isReadable(status)) return "not known here";
        return Files.readAllLines(status).stream()
                .filter(line -> line.startsWith("VmHWM"))
                .map(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024 + " MB")
                .findFirst()
                .orElse("not known here");
    }

    /** The scheme of bench-make-data.R with Java's random numbers. */
    private void write(Path file) throws IOException {
        Random random = new Random(1);
        int founders = Math.max(60, plants / 250);
        int[] seed = new int[plants];
        int[] pollen = new int[plants];
        int[] crop = new int[plants];
        java.util.Arrays.fill(seed, -1);
        java.util.Arrays.fill(pollen, -1);
        int next = founders;
        for (int year = 1; next < plants; year++) {
            List<Integer> pool = pool(random, founders, crop, next, year);
            for (int made = 0; made < Math.max(1, plants / 25) && next < plants; ) {
                int mother = pool.get(random.nextInt(pool.size()));
                double chance = random.nextDouble();
                int father = chance < 0.1 ? -1 : chance < 0.12 ? mother : pool.get(random.nextInt(pool.size()));
                for (int size = 1 + poisson(random, family - 1); size > 0 && next < plants; size--, made++, next++) {
                    seed[next] = mother;
                    pollen[next] = father;
                    crop[next] = year;
                }
            }
        }
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("id,seed_parent,pollen_parent\n");
            for (int i = 0; i < plants; i++) out.write("P" + i + "," + name(seed[i]) + "," + name(pollen[i]) + "\n");
        }
    }

    private List<Integer> pool(Random random, int founders, int[] crop, int made, int year) {
        List<Integer> old = new ArrayList<>();
        for (int i = 0; i < founders; i++) old.add(i);
        List<Integer> young = new ArrayList<>();
        for (int i = founders; i < made; i++) if (crop[i] <= year - 3 && crop[i] >= year - 10) young.add(i);
        if (young.isEmpty()) return old;
        Collections.shuffle(old, random);
        Collections.shuffle(young, random);
        List<Integer> pool = new ArrayList<>(old.subList(0, Math.max(5, founders / 5)));
        pool.addAll(young.subList(0, Math.min(young.size(), Math.max(12, plants / 25 / family))));
        return pool;
    }

    private static String name(int plant) {
        return plant < 0 ? "" : "P" + plant;
    }

    private static int poisson(Random random, double mean) {
        double limit = Math.exp(-mean);
        int count = -1;
        for (double product = 1; product > limit; product *= random.nextDouble()) count++;
        return count;
    }
}
