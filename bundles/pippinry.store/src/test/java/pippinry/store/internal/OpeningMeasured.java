package pippinry.store.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Random;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kinds;
import pippinry.store.internal.ledger.Disk;

/**
 * Measures how long a program takes to open and how much memory it needs, each in a process of its own:
 * {@code make DIR GENOTYPES PLANTS SCORES HOURS}, then {@code open DIR}, {@code read DIR} or {@code edit DIR TIMES}.
 */
public final class OpeningMeasured {

    private static final int AT_ONCE = 100_000;
    private static final String[] TRAITS = {"bbch", "scab_leaf", "firmness", "brix", "acid", "weight", "russet", "crop"
    };

    private final Path folder;
    private final Random random = new Random(26);

    private OpeningMeasured(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] args) throws Exception {
        OpeningMeasured measured = new OpeningMeasured(Path.of(args[1]));
        switch (args[0]) {
            case "make" -> measured.make(number(args[2]), number(args[3]), number(args[4]), number(args[5]));
            case "open" -> measured.open(false);
            case "read" -> measured.open(true);
            default -> measured.edit(number(args[2]));
        }
    }

    private static int number(String text) {
        return Integer.parseInt(text);
    }

    private FolderOpening opening() {
        return new FolderOpening(folder, Clock.systemUTC(), new Disk(), (edit, changes) -> {});
    }

    private void make(int genotypes, int plants, int scores, int hours) throws EditRefused {
        try (ProgramStore store = opening().create()) {
            put(store, genotypes, (draft, i) -> draft.put(Kinds.GENOTYPES, genotype(i)));
            put(
                    store,
                    plants,
                    (draft, i) -> draft.put(
                            Kinds.PLANTS,
                            Rows.row(
                                    Kinds.PLANTS,
                                    "tag",
                                    code(i % genotypes) + "_" + i,
                                    "genotype",
                                    code(i % genotypes),
                                    "kind",
                                    "own-root",
                                    "made_on",
                                    "2019-03-" + (10 + i % 20),
                                    "status",
                                    "alive")));
            put(store, scores, (draft, i) -> draft.put(Kinds.SCORES, score(i, genotypes)));
            put(store, hours, (draft, i) -> draft.put(Kinds.WEATHER, hour(i)));
        }
        System.out.printf("made: ledger %d MB, store %d MB%n", megabytes("ledger"), megabytes("store"));
    }

    private interface Filling {
        void put(Edit.Draft draft, int i);
    }

    private static void put(ProgramStore store, int count, Filling filling) throws EditRefused {
        for (int from = 0; from < count; from += AT_ONCE) {
            Edit.Draft draft = Edit.by("IN", "measure");
            for (int i = from; i < Math.min(count, from + AT_ONCE); i++) {
                filling.put(draft, i);
            }
            store.apply(draft.done());
        }
    }

    /** The underscore keeps the check character out of it. */
    private static String code(int i) {
        return "%02d_%03d_%03d".formatted(i / 40_000, i / 200 % 1000, i % 200);
    }

    private pippinry.model.record.Genotype genotype(int i) {
        return i < 50
                ? Rows.row(
                        Kinds.GENOTYPES, "code", code(i), "name", "founder " + i, "kind", "cultivar", "crop", "apple")
                : Rows.row(
                        Kinds.GENOTYPES,
                        "code",
                        code(i),
                        "crop",
                        "apple",
                        "kind",
                        "seedling",
                        "ploidy",
                        "2",
                        "seed_parent",
                        code(random.nextInt(50)),
                        "pollen_parent",
                        code(random.nextInt(50)),
                        "seed_link",
                        "sure",
                        "pollen_link",
                        "sure",
                        "link_ground",
                        "tag",
                        "year",
                        Integer.toString(2005 + i % 20));
    }

    private pippinry.model.record.Score score(int i, int genotypes) {
        return Rows.row(
                Kinds.SCORES,
                "subject",
                code(i / 8 % genotypes),
                "trait",
                TRAITS[i % TRAITS.length],
                "value",
                Double.toString(random.nextInt(10_000) / 10.0),
                "date",
                LocalDate.of(2012, 4, 1).plusDays(i / 400 % 4000).toString(),
                "scorer",
                i % 3 == 0 ? "IN" : "MW",
                "sheet",
                "S_" + i / 200);
    }

    private pippinry.model.record.WeatherHour hour(int i) {
        return Rows.row(
                Kinds.WEATHER,
                "time",
                LocalDateTime.of(2015, 1, 1, 0, 0).plusHours(i).toString(),
                "temp_c",
                Double.toString(random.nextInt(300) / 10.0),
                "wet_min",
                Integer.toString(random.nextInt(61)),
                "rain_mm",
                "0",
                "rh_pct",
                Integer.toString(40 + random.nextInt(60)));
    }

    private void open(boolean toRead) {
        long start = System.nanoTime();
        try (ProgramStore store = toRead ? opening().openToRead() : opening().open()) {
            long opened = System.nanoTime();
            System.gc();
            Runtime runtime = Runtime.getRuntime();
            System.out.printf(
                    "opened in %d ms, %d ms since the process began; heap %d MB; %d scores, %d genotypes; %s%n",
                    (opened - start) / 1_000_000,
                    sinceProcessBegan(),
                    (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000,
                    store.now().table(Kinds.SCORES).size(),
                    store.now().table(Kinds.GENOTYPES).size(),
                    store.notices());
            start = System.nanoTime();
        }
        System.out.printf("closed in %d ms%n", (System.nanoTime() - start) / 1_000_000);
    }

    private static long sinceProcessBegan() {
        return System.currentTimeMillis()
                - java.lang.management.ManagementFactory.getRuntimeMXBean().getStartTime();
    }

    private void edit(int times) throws EditRefused {
        try (ProgramStore store = opening().open()) {
            int genotypes = store.now().table(Kinds.GENOTYPES).size();
            long[] nanos = new long[times];
            for (int i = 0; i < times; i++) {
                long start = System.nanoTime();
                store.apply(Edit.by("IN", "one score")
                        .put(Kinds.SCORES, score(random.nextInt(1_000_000), genotypes))
                        .done());
                nanos[i] = System.nanoTime() - start;
            }
            java.util.Arrays.sort(nanos);
            System.out.printf(
                    "edit: median %.2f ms, 99%% below %.2f ms%n",
                    nanos[times / 2] / 1e6, nanos[times * 99 / 100] / 1e6);
        }
    }

    private long megabytes(String name) {
        try (var files = Files.walk(folder.resolve(name))) {
            return files.filter(Files::isRegularFile)
                            .mapToLong(file -> file.toFile().length())
                            .sum()
                    / 1_000_000;
        } catch (IOException e) {
            return -1;
        }
    }
}
