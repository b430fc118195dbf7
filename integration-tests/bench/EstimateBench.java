import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pippinry.pedigree.internal.kinship.Kinship;
import pippinry.pedigree.internal.kinship.PedigreeDraft;
import pippinry.pedigree.internal.kinship.RelationshipInverse;
import pippinry.statistics.mixed.Estimates;
import pippinry.statistics.mixed.MixedModel;
import pippinry.statistics.mixed.RandomTerm;
import pippinry.statistics.mixed.Reml;
import pippinry.statistics.sparse.EliminationPlan;
import pippinry.statistics.sparse.LooseElements;
import pippinry.statistics.sparse.SparseCholesky;
import pippinry.statistics.sparse.SparseSymmetric;

/**
 * The repeatability animal model y = year + additive + permanent + residual, ours beside R with its sparse Cholesky on the same
 * records in the same run: equations, ordering and factor, solution, standard errors of all, REML of three variances.
 *
 * <p>{@code java -cp JARS EstimateBench.java FOLDER PLANTS FAMILY}
 */
final class EstimateBench {

    private static final double ADDITIVE = 4;
    private static final double PERMANENT = 1;
    private static final double RESIDUAL = 6.25;
    private static final int MOST_FOR_REML_IN_R = 100_000;

    private final Path folder;
    private final String tag;
    private final int plants;
    private final int family;
    private final Map<String, Integer> numbers = new HashMap<>();
    private Kinship kinship;
    private RelationshipInverse inverse;
    private int[] plantOf;
    private int[] yearOf;
    private double[] records;
    private List<String> years;

    private EstimateBench(Path folder, int plants, int family) {
        this.folder = folder;
        this.plants = plants;
        this.family = family;
        this.tag = family == 20 ? "" + plants : plants + "f" + family;
    }

    public static void main(String[] args) throws Exception {
        new EstimateBench(Path.of(args[0]), Integer.parseInt(args[1]), Integer.parseInt(args[2])).run();
    }

    private void run() throws Exception {
        double load = java.lang.management.ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        System.out.printf("%n%,d plants in families of about %d; %d processors, load %.1f, Java %s%n",
                plants, family, Runtime.getRuntime().availableProcessors(), load, System.getProperty("java.version"));
        boolean r = hasR();
        if (r) {
            ask("bench-make-data.R", "" + plants, "1", "" + family);
        } else {
            write();
        }
        read();
        Map<String, Double> first = new LinkedHashMap<>();
        String ours = measure(first);
        Map<String, Double> warm = new LinkedHashMap<>(first);
        for (int again = 0; again < 2; again++) {
            Map<String, Double> times = new LinkedHashMap<>();
            measure(times);
            times.forEach((step, seconds) -> warm.merge(step, seconds, Math::min));
        }
        String known = r ? ask("bench-animal-model.R", tag) : "";
        String reml = r && plants <= MOST_FOR_REML_IN_R && family >= 20 ? ask("bench-reml.R", tag) : "";
        System.out.printf("%-32s %10s %10s %10s %8s%n", "seconds", "first run", "warm", "R", "R/warm");
        row("assemble mixed model equations", first, warm, seconds(known, "assemble mixed model equations"));
        row("ordering and factor", first, warm, seconds(known, "Cholesky, ordering and factor"));
        row("factor again", first, warm, seconds(known, "numeric refactor only"));
        row("solve", first, warm, seconds(known, "solve"));
        row("error variances", first, warm, seconds(known, "PEV of 200"));
        row("REML", first, warm, seconds(reml, "REML, Nelder-Mead") + seconds(reml, "polish"));
        System.out.println("(error variances: ours of all plants by the selected inverse, in R of 200 plants by a solution each)");
        System.out.println("ours: " + ours);
        System.out.println(r ? "R:    " + line(known, "nonzeros in factor") + "\n      " + line(reml, "variances additive")
                : "R:    not here (Rscript with packages Matrix and jsonlite); our side alone");
    }

    private static void row(String step, Map<String, Double> first, Map<String, Double> warm, double r) {
        System.out.printf("%-32s %10.3f %10.3f %10s %8s%n", step, first.get(step), warm.get(step),
                Double.isNaN(r) ? "-" : "%.3f".formatted(r), Double.isNaN(r) ? "-" : "%.1f".formatted(r / warm.get(step)));
    }

    private String measure(Map<String, Double> times) {
        SparseSymmetric equations = time("assemble mixed model equations", times, this::equations);
        EliminationPlan[] plan = new EliminationPlan[1];
        SparseCholesky factor = time("ordering and factor", times, () -> {
            plan[0] = EliminationPlan.of(equations);
            return SparseCholesky.of(plan[0], equations);
        });
        time("factor again", times, () -> SparseCholesky.of(plan[0], equations));
        time("solve", times, () -> factor.solve(new double[equations.size()]));
        time("error variances", times, factor::inverseAtElements);
        Estimates estimates = time("REML", times, () -> Reml.of(model()));
        Map<String, Estimates.Value> variances = estimates.variances();
        return "%,d elements in the factor; REML in %d steps: additive %.8g permanent %.8g residual %.8g logLik %.12g".formatted(
                plan[0].elementsOfFactor(), estimates.steps(), variances.get("genotype").value(),
                variances.get("id").value(), variances.get("residual").value(), estimates.logLikelihood());
    }

    private static <T> T time(String step, Map<String, Double> times, Supplier<T> work) {
        long start = System.nanoTime();
        T result = work.get();
        times.put(step, (System.nanoTime() - start) / 1e9);
        return result;
    }

    private MixedModel model() {
        double[] variances = new double[inverse.size()];
        for (int row = 0; row < variances.length; row++) {
            variances[row] = 1 + kinship.inbreeding(inverse.individual(row));
        }
        SparseSymmetric matrix = new SparseSymmetric(inverse.columnStart(), inverse.rows(), inverse.values());
        return MixedModel.of(records)
                .classes(years, yearOf)
                .random(new RandomTerm("genotype", inverse.size(), Arrays.stream(plantOf).map(inverse::row).toArray(),
                        Optional.of(new RandomTerm.Covariance(matrix, kinship.logDeterminant(), variances))))
                .random(RandomTerm.independent("id", plants, plantOf))
                .done();
    }

    /** The equations at the known variances, every year a column of its own. */
    private SparseSymmetric equations() {
        int start = years.size();
        LooseElements elements = new LooseElements(start + 2 * plants);
        for (int i = 0; i < records.length; i++) {
            int additive = start + inverse.row(plantOf[i]);
            int permanent = start + plants + plantOf[i];
            int[] places = {yearOf[i], additive, permanent};
            for (int a = 0; a < 3; a++) for (int b = a; b < 3; b++) elements.add(places[a], places[b], 1);
        }
        int[] columnStart = inverse.columnStart();
        int[] rows = inverse.rows();
        double[] values = inverse.values();
        for (int column = 0; column < plants; column++) {
            for (int at = columnStart[column]; at < columnStart[column + 1]; at++) {
                elements.add(start + rows[at], start + column, values[at] * RESIDUAL / ADDITIVE);
            }
            elements.add(start + plants + column, start + plants + column, RESIDUAL / PERMANENT);
        }
        return elements.sum();
    }

    private void read() {
        PedigreeDraft draft = new PedigreeDraft();
        eachLine("pedigree-" + tag + ".csv", cells -> {
            int who = number(cells[0], draft);
            if (!cells[1].isEmpty()) draft.seedParent(who, number(cells[1], draft));
            if (!cells[2].isEmpty()) draft.pollenParent(who, number(cells[2], draft));
        });
        kinship = Kinship.of(draft.build());
        inverse = RelationshipInverse.of(kinship);
        List<String[]> rows = new ArrayList<>();
        eachLine("records-" + tag + ".csv", rows::add);
        years = List.copyOf(new java.util.TreeSet<>(rows.stream().map(row -> row[1]).toList()));
        Map<String, Integer> year = new TreeMap<>();
        years.forEach(text -> year.put(text, year.size()));
        plantOf = rows.stream().mapToInt(row -> numbers.get(row[0])).toArray();
        yearOf = rows.stream().mapToInt(row -> year.get(row[1])).toArray();
        records = rows.stream().mapToDouble(row -> Double.parseDouble(row[2])).toArray();
    }

    private int number(String code, PedigreeDraft draft) {
        return numbers.computeIfAbsent(code, fresh -> draft.add());
    }

    private void eachLine(String file, java.util.function.Consumer<String[]> taker) {
        try (BufferedReader in = Files.newBufferedReader(folder.resolve(file))) {
            in.readLine();
            for (String line = in.readLine(); line != null; line = in.readLine()) taker.accept(line.split(",", -1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean hasR() {
        try {
            return new ProcessBuilder("Rscript", "-e", "library(Matrix); library(jsonlite)")
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

    private static double seconds(String answer, String step) {
        Matcher found = Pattern.compile("(?m)^" + Pattern.quote(step) + ".*?([0-9.]+) s$").matcher(answer);
        return found.find() ? Double.parseDouble(found.group(1)) : Double.NaN;
    }

    private static String line(String answer, String beginning) {
        return answer.lines().filter(line -> line.startsWith(beginning)).findFirst().orElse("REML not asked of R at this size");
    }

    /** A planting of our own where R is not there: crops of full-sib families, one to three records each. */
    private void write() throws IOException {
        Random random = new Random(1);
        int founders = Math.max(60, plants / 250);
        int[][] parents = new int[plants][];
        double[] value = new double[plants];
        for (int i = 0; i < plants; ) {
            int mother = i < founders ? -1 : random.nextInt(Math.max(founders, i - plants / 10));
            int father = i < founders || random.nextDouble() < 0.1 ? -1 : random.nextInt(Math.max(founders, i - plants / 10));
            int sibs = i < founders ? 1 : family;
            for (int k = 0; k < sibs && i < plants; k++, i++) {
                parents[i] = new int[] {mother, father};
                double half = (mother < 0 ? 0 : value[mother] / 2) + (father < 0 ? 0 : value[father] / 2);
                value[i] = half + random.nextGaussian() * Math.sqrt(ADDITIVE / (mother < 0 ? 1 : 2));
            }
        }
        List<String> order = new ArrayList<>();
        try (BufferedWriter out = Files.newBufferedWriter(folder.resolve("pedigree-" + tag + ".csv"))) {
            out.write("id,seed_parent,pollen_parent\n");
            for (int i = 0; i < plants; i++) out.write("P" + i + "," + name(parents[i][0]) + "," + name(parents[i][1]) + "\n");
        }
        for (int i = 0; i < plants; i++) {
            double permanent = random.nextGaussian();
            for (int k = 0; k <= random.nextInt(3); k++) {
                int year = 2003 + (int) (25L * i / plants) + k;
                double y = 50 + year % 7 + value[i] + permanent + random.nextGaussian() * Math.sqrt(RESIDUAL);
                order.add("P%d,%d,%.3f".formatted(i, year, y));
            }
        }
        Collections.shuffle(order, random);
        Files.write(folder.resolve("records-" + tag + ".csv"), List.of("id,year,y"));
        Files.write(folder.resolve("records-" + tag + ".csv"), order, java.nio.file.StandardOpenOption.APPEND);
    }

    private static String name(int plant) {
        return plant < 0 ? "" : "P" + plant;
    }
}
